"""A lesson with a what-if stop in two languages, in a site of its own."""

from __future__ import annotations

from pathlib import Path

from tests.site_project import copy_project

LESSON = """\
title: Two pots
summary: Change one thing.
grades: 3-5
minutes: 10
stops:
  - compare:
      id: pots
      title: Two pots, four rows
      measure: fiber
      sides: [Rosa's pot, Ilyas's pot]
      rows:
        - [{food: lentils-boiled, amount: 1 cup}, {food: rice-white-cooked, amount: 1 cup}]
        - [{food: pasta-cooked, amount: 1 cup elbows}, {food: barley-cooked, amount: 1 cup}]
        - [{food: chickpeas-boiled, amount: 1 cup}, {food: split-peas-boiled, amount: 1 cup}]
        - [{food: black-beans-boiled, amount: 1 cup}, {food: pinto-beans-boiled, amount: 1 cup}]
      solve: [gap, total]
  - what_if:
      id: swap
      for: pots
      prompt: Change one thing in a pot.
      changes:
        - {change: rice-white-cooked, to: {food: barley-cooked, amount: 1 cup}}
        - {change: lentils-boiled, to: {food: lentils-boiled, amount: 1/2 cup}, name: Half the lentils}
        - {change: pasta-cooked, leave_out: true}
      reveal: Look at both pots, not at one.
  - talk: {prompt: What would you change?, ideas: [A bean]}
"""
SPANISH = """\
title: Dos ollas
summary: Cambia una cosa.
stops:
  pots: {title: Dos ollas y cuatro filas, sides: [La olla de Rosa, La olla de Ilyas]}
  swap: {prompt: Cambia una cosa en una olla., reveal: Mira las dos ollas.}
  what-would-you-change: {prompt: ¿Qué cambiarías?, ideas: [Un frijol]}
foods: {Half the lentils: La mitad de las lentejas}
"""


def pots_project(folder: Path) -> Path:
    """The program's site with this lesson alone."""
    root = copy_project(folder, lessons=False)
    lesson = root / "lessons/pots"
    lesson.mkdir(parents=True)
    (lesson / "lesson.yaml").write_text(LESSON, "utf-8")
    (lesson / "lesson.es.yaml").write_text(SPANISH, "utf-8")
    return root
