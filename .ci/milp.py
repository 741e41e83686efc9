"""Solves the sizing problems that .ci/milp had written with scipy.optimize.milp (HiGHS) and compares the least costs."""
import glob
import json
import os
import sys

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp


def least(problem):
    """The least cost: one choice of each wire, every load's drops within its allowance; None where none is."""
    cost = numpy.concatenate(problem["cost"])
    starts = numpy.cumsum([0] + [len(c) for c in problem["cost"]])
    one = numpy.zeros((len(problem["cost"]), len(cost)))
    drops = numpy.zeros((len(problem["allowance"]), len(cost)))
    for wire, loads in enumerate(problem["loads"]):
        at = slice(starts[wire], starts[wire + 1])
        one[wire, at] = 1
        for load in loads:
            drops[load, at] = problem["drop"][wire]
    found = milp(cost, constraints=[LinearConstraint(one, 1, 1), LinearConstraint(drops, -numpy.inf, problem["allowance"])],
                 integrality=numpy.ones(len(cost)), bounds=Bounds(0, 1), options={"mip_rel_gap": 0, "time_limit": 60})
    if found.status not in (0, 2):
        return "undecided"
    return None if found.status == 2 else found.fun


def main():
    for size in ("small", "large"):
        same = none = undecided = 0
        apart, bad = 0.0, []
        for path in sorted(glob.glob(os.path.join(sys.argv[1], size + "-*.json"))):
            with open(path, encoding="utf-8") as file:
                problem = json.load(file)
            answer = least(problem)
            if answer == "undecided":
                undecided += 1
            elif answer is None or problem["least"] is None:
                none += answer is None and problem["least"] is None
                if (answer is None) != (problem["least"] is None):
                    bad.append((os.path.basename(path), answer, problem["least"]))
            else:
                difference = abs(answer - problem["least"]) / answer
                apart = max(apart, difference)
                same += difference <= 1e-6
                if difference > 1e-6:
                    bad.append((os.path.basename(path), answer, problem["least"]))
        print(f"{size}: {same} the same least (furthest apart {apart:.1e}), {none} without a choice in both, {undecided} undecided, {len(bad)} different {bad}")


main()
