/** Blocks matched by hand leave the gap, whichever way they are matched. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { BlockMatching } from "../../theme/js/block-matching.js";

/**
 * Matches until one side is all matched, each time a size that `choose` picks.
 * @param {BlockMatching} matching
 * @param {(choices: number[]) => number} choose
 */
function matchAll(matching, choose) {
  for (let step = 0; !matching.isDone(); step += 1) {
    assert.ok(step < 2000, "it comes to an end");
    const choices = matching.sizes.map((_, at) => at).filter((at) => matching.loose.some((pile) => pile[at]));
    assert.notEqual(matching.match(choose(choices)), "");
  }
}

test("what is left is the gap, from the largest and from the smallest block on", () => {
  const pairs = [[900, 4100], [4200, 2800], [0, 450], [1000, 50], [45, 120], [12, 31], [3000, 3000], [1200, 1195]];
  for (const [first = 0, second = 0] of pairs) {
    for (const choose of [(/** @type {number[]} */ all) => Number(all[0]), (/** @type {number[]} */ all) => Number(all[all.length - 1])]) {
      const matching = new BlockMatching([first, second]);
      matchAll(matching, choose);
      const left = matching.left();
      assert.equal(Math.max(...left), Math.abs(first - second), `${first} and ${second}`);
      assert.equal(Math.min(...left), 0);
      assert.equal(left.indexOf(Math.max(...left)), first >= second ? 0 : 1, "on the side that holds more");
    }
  }
});

test("a block meets one of its size, else a larger one opens, else it opens itself", () => {
  const matching = new BlockMatching([900, 4100]);
  assert.equal(matching.match(1), "laid", "a ten on the ten of 410");
  assert.equal(matching.match(1), "traded", "a hundred of 410 opens into tens");
  assert.deepEqual(matching.loose[1], [3, 9, 0, 0]);
  assert.equal(matching.match(0), "opened", "90 has no hundred, and tens to lay");
  assert.equal(matching.match(2), "", "nobody has ones");
});

test("what is left cannot be matched", () => {
  const matching = new BlockMatching([0, 450]);
  assert.ok(matching.isDone());
  assert.equal(matching.match(1), "");
  assert.deepEqual(matching.left(), [0, 450]);
});
