/**
 * What may have happened when an answer came out wrong: the same procedures, in the same order of
 * preference, as generator/compute/mistakes.py, which names their sources. All numbers are in
 * tenths, so that half a gram is a whole number too.
 */

const COUNTED_BELOW = 200; // tenths; children count there rather than write digit under digit

/**
 * @param {number} top the larger value
 * @param {number} bottom the smaller value
 * @param {number} answer
 * @returns {string} the mistake's name, or nothing for an answer we cannot read
 */
export function gapMistake(top, bottom, answer) {
  const counted = top < COUNTED_BELOW && (top % 10) + (bottom % 10) === 0;
  if (counted && bottom && Math.abs(answer - (top - bottom)) === 10) return "one_off";
  return first(answer, top - bottom, { ...bugAnswers(top, bottom), ...slips(top, bottom), ...placeSlips(top - bottom) });
}

/**
 * What each documented subtraction bug makes of two numbers; nothing where it cannot happen.
 * @param {number} top
 * @param {number} bottom
 * @returns {Record<string, number[]>}
 */
export function bugAnswers(top, bottom) {
  return {
    smaller_from_larger: columns(top, bottom, (a, b) => Math.abs(a - b)),
    no_decrement: columns(top, bottom, (a, b) => (a - b + 10) % 10),
    zero_gives_digit: columns(top, bottom, (a, b, owed) => (a || owed ? a - b - owed : b)),
    zero_gives_zero: columns(top, bottom, (a, b, owed) => (a || owed ? a - b - owed : 0)),
    across_zero: acrossZero(top, bottom),
  };
}

/**
 * Answers that need no digits to be seen: added, or one of the two numbers, or one out.
 * @param {number} top
 * @param {number} bottom
 */
function slips(top, bottom) {
  return {
    added: [top + bottom],
    took_zero: bottom ? [] : [0],
    same_number: top === bottom ? [top] : [],
    own_number: top === bottom ? [] : [top, bottom],
    one_off: [top - bottom + 10, top - bottom - 10],
  };
}

/**
 * @param {number} gap
 * @param {number} per how much of the gap is one count
 * @param {number} answer
 */
export function countMistake(gap, per, answer) {
  const count = Math.floor(gap / per);
  return first(answer, count * 10, {
    forgot_to_divide: [gap],
    multiplied: [(gap * per) / 10],
    took_one_away: [gap - per],
    moved_zero: zeroInside(count),
    counted_left_over: gap % per ? [count * 10 + 10, (gap * 10) / per] : [],
    ...tensAndHundreds(gap, per),
    one_off: [count * 10 + 10, count * 10 - 10],
    ...placeSlips(count * 10),
  });
}

/**
 * @param {number} answer
 * @param {number} right
 * @param {Record<string, number[]>} answers
 */
function first(answer, right, answers) {
  if (answer === right) return "";
  return Object.keys(answers).find((mistake) => answers[mistake]?.includes(answer)) ?? "";
}

/**
 * Subtracts place by place, from the right; `column` gives what two digits leave, below 0 where it borrows.
 * @param {number} top
 * @param {number} bottom
 * @param {(a: number, b: number, owed: number) => number} column
 */
function columns(top, bottom, column) {
  let answer = 0;
  let owed = 0;
  for (let one = 1; one <= top; one *= 10) {
    const left = column(digitAt(top, one), digitAt(bottom, one), owed);
    answer += ((left + 10) % 10) * one;
    owed = left < 0 ? 1 : 0;
  }
  return [answer];
}

/**
 * Borrows from the next digit that is not 0 and leaves the zeros between as they are.
 * @param {number} top
 * @param {number} bottom
 */
function acrossZero(top, bottom) {
  const end = top;
  let answer = 0;
  let skipped = false;
  for (let one = 1; one <= end; one *= 10) {
    const left = digitAt(top, one) - digitAt(bottom, one);
    answer += ((left + 10) % 10) * one;
    if (left >= 0) continue;
    let lender = one * 10;
    while (lender <= end && !digitAt(top, lender)) lender *= 10;
    top -= lender; // below 0 where nothing is left to borrow from: this child would have noticed
    skipped ||= lender > one * 10;
  }
  return skipped && top >= 0 ? [answer] : [];
}

/**
 * Counts that see only the tens, only what is left over, or only the hundreds.
 * @param {number} gap
 * @param {number} per
 */
function tensAndHundreds(gap, per) {
  const inTens = per > 100 && per % 100 === 0; // a count of ten is the tens themselves
  const hundreds = per < 1000 ? Math.floor(gap / 1000) : 0;
  return {
    counted_tens: inTens && gap >= 100 ? [Math.floor(gap / 100) * 10] : [],
    divided_by_tens: inTens ? [(gap * 100) / per] : [],
    gave_left_over: gap % per ? [gap % per] : [],
    counted_hundreds: hundreds ? [hundreds * 10] : [],
    stopped_at_hundreds: hundreds ? [Math.floor((hundreds * 1000) / per) * 10] : [],
  };
}

/** @param {number} count */
function zeroInside(count) {
  const digits = String(count);
  return [...digits.slice(1)].map((_, at) => Number(`${digits.slice(0, at + 1)}0${digits.slice(at + 1)}`) * 10);
}

/** @param {number} right */
function placeSlips(right) {
  return {
    dropped_zero: [right / 10],
    kept_zero: [right * 10],
    ten_off: [right + 100, right - 100],
    hundred_off: [right + 1000, right - 1000],
  };
}

/**
 * @param {number} number
 * @param {number} one
 */
function digitAt(number, one) {
  return Math.floor(number / one) % 10;
}
