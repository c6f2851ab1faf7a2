/** Class links are written and read as Python does. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { readClassLink, writeClassLink } from "../../theme/js/class-link.js";
import { examples } from "./examples.js";

const cases = examples("class-links");

for (const { title, lesson, link, fragment } of cases.links)
  test(`a class link: ${title}`, () => {
    assert.equal(writeClassLink(link, lesson), fragment);
    assert.deepEqual(readClassLink(fragment, lesson), link);
  });

for (const { title, lesson, written, as } of cases.also_read)
  test(`a class link is read as it was: ${title}`, () => {
    assert.equal(typeof readClassLink(written, lesson), "object");
    assert.deepEqual(readClassLink(written, lesson), readClassLink(as, lesson));
  });

for (const { title, lesson, fragment, why } of cases.unopened) test(`a fragment opens nothing: ${title}`, () => assert.equal(readClassLink(fragment, lesson), why));

test("a huge fragment is not looked through", () => {
  assert.equal(readClassLink(`for-class=${"+".repeat(5_000_000)}`, "river-walk"), "spoiled");
  const many = Array.from({ length: 1000 }, (_, number) => `stop-${number}`);
  assert.equal(readClassLink(writeClassLink({ ...cases.links[0].link, stops: many }, "river-walk"), "river-walk"), "spoiled");
});
