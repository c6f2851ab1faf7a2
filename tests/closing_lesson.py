"""A lesson with questions that can be checked, in two languages, for tests of pages and papers.

Its numbers are its own: 410 and 90, 280 and 420, 0 and 40 kcal, so gaps of 320, 140 and 40, sides of 690 and 550.
"""

from __future__ import annotations

from pathlib import Path

from tests.site_project import copy_project

LESSON = """\
title: Two lunches
summary: Find the gap, then look back.
grades: 3-5
minutes: 10
goals: [Subtract.]
parting:
  prompt: They share it all, half and half. How much does each of them get?
  hint: Add both sides first.
  answer: half (lunch.total.from-town + lunch.total.from-home)
  reveal: Now there is no gap.
stops:
  - ask:
      id: guess
      prompt: Which side do you think holds more?
      which: {of: lunch, among: sides, holds: most}
      reveal: You will see.
  - compare:
      id: lunch
      measure: energy
      sides: [From town, From home]
      rows:
        - [{name: Pie, value: 410, source: card}, {name: Apple, value: 90, source: card}]
        - help: hops
          foods: [{name: Pizza, value: 280, source: card}, {name: Sandwich, value: 420, source: card}]
        - help: worked
          foods: [{name: Water, value: 0, source: card}, {name: Juice, value: 40, source: card}]
      solve: [gap, count]
      estimate:
        prompt: Is the first gap nearer to 100, 300 or 500? Say how you know.
        choices: [100, 300, 500]
      reveal: Both lunches can be shared.
  - move: {for: lunch, one_move_per: 10, moves: [march, side-step, sky-press]}
  - ask:
      id: ten-tens
      prompt: How many tens make one hundred?
      choices:
        - says: Five
        - says: Ten
          right: true
      reveal: Ten tens lie side by side.
"""
SPANISH = """\
title: Dos almuerzos
summary: Halla la diferencia y luego mira atrás.
goals: [Restar.]
parting:
  prompt: Lo comparten todo por mitades. ¿Cuánto le toca a cada uno?
  hint: Suma primero los dos lados.
  reveal: Ahora no hay diferencia.
stops:
  guess: {prompt: ¿Qué lado crees que tiene más?, reveal: Ya verás.}
  lunch:
    sides: [Del pueblo, De casa]
    estimate: {prompt: "¿La primera diferencia está más cerca de 100, 300 o 500? Di cómo lo sabes."}
    reveal: Los dos almuerzos se pueden compartir.
  ten-tens:
    prompt: ¿Cuántas decenas hacen una centena?
    reveal: Diez decenas, una junto a otra.
    choices: [{says: Cinco}, {says: Diez}]
foods: {Pie: Pay, Apple: Manzana, Pizza: Pizza de queso, Sandwich: Sándwich, Water: Agua, Juice: Jugo, card: tarjeta}
"""


def closing_project(folder: Path) -> Path:
    """A site of this lesson alone, in English and Spanish."""
    root = copy_project(folder, lessons=False)
    place = root / "lessons/two-lunches"
    place.mkdir()
    (place / "lesson.yaml").write_text(LESSON, "utf-8")
    (place / "lesson.es.yaml").write_text(SPANISH, "utf-8")
    return root
