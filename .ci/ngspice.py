"""Runs ngspice on the netlists that .ci/ngspice had written: compares node voltages, takes times, writes the table of docs/models/harness.md (and, with --data, what the tests read)."""
import csv
import datetime
import decimal
import os
import re
import shutil
import statistics
import subprocess
import sys
import time

FOLDER = sys.argv[1]
OPTIONS = ".options reltol=1e-10 vntol=1e-12 abstol=1e-13 gmin=1e-18 itl1=500\n"
PAGE = "docs/models/harness.md"
DATA = "tests/LowVoltage.Calc.Tests/PublishedData"
PROCESSES = 25
REPEATS = {10: 1000, 100: 300, 1000: 30}


def run(path):
    began = time.perf_counter()
    done = subprocess.run(["ngspice", "-b", path], capture_output=True, text=True)
    return time.perf_counter() - began, done.stdout + done.stderr


def written(name, text):
    path = os.path.join(FOLDER, name)
    with open(path, "w", encoding="utf-8", newline="\n") as file:
        file.write(text)
    return path


def netlist(case, control):
    with open(os.path.join(FOLDER, case["case"] + ".cir"), encoding="utf-8") as file:
        body = file.read()
    return written("now.cir", body + OPTIONS + ".control\n" + control + ".endc\n.end\n")


def answers(case):
    """ngspice's volts, node by node in the order of the harness."""
    _, text = run(netlist(case, "set numdgt=15\nop\nprint all\n"))
    volts = dict(re.findall(r"^(?:v\()?n(\d+)\)? = (\S+)", text, re.MULTILINE))
    found = ["0" if str(k) == case["reference"] else volts.get(str(k)) for k in range(int(case["nodes"]))]
    if None in found or re.search(r"no convergence|singular|aborted", text, re.IGNORECASE):
        sys.exit(f"ngspice has no answer to {case['case']}:\n{text[-2000:]}")
    return found


def ours(case):
    with open(os.path.join(FOLDER, case["case"] + ".volts"), encoding="utf-8") as file:
        return [float(line) for line in file]


def exact(case):
    """The volts of a straight harness by elimination in 50 decimal digits: says whose the difference is."""
    decimal.getcontext().prec = 50
    number, resistors, over, rows, right = decimal.Decimal, [], {}, {}, {}

    def root(node):
        volts = number(0)
        while node in over:
            node, more = over[node]
            volts += more
        return node, volts

    with open(os.path.join(FOLDER, case["case"] + ".cir"), encoding="utf-8") as file:
        for kind, *cells in (line.split() for line in file if line[0] in "RV"):
            if kind[0] == "R":
                resistors.append((cells[0], cells[1], 1 / number(cells[2])))
            else:
                (a, up), (b, down) = root(cells[0]), root(cells[1])
                if a == "0":
                    a, up, b, down, cells[2] = b, down, a, up, "-" + cells[2]
                over[a] = (b, down + number(cells[2]) - up)
    for one, other, siemens in resistors:
        (a, up), (b, down) = root(one), root(other)
        for here, there, lift in ((a, b, up - down), (b, a, down - up)):
            if a != b and here != "0":
                row = rows.setdefault(here, {})
                row[here] = row.get(here, 0) + siemens
                right[here] = right.get(here, 0) - siemens * lift
                if there != "0":
                    row[there] = row.get(there, 0) - siemens
    order = []
    while rows:
        pivot = min(rows, key=lambda node: len(rows[node]))
        line = rows.pop(pivot)
        order.append((pivot, line))
        for node in line:
            if node != pivot:
                share = rows[node].pop(pivot) / line[pivot]
                right[node] -= share * right[pivot]
                for k, value in line.items():
                    if k != pivot:
                        rows[node][k] = rows[node].get(k, 0) - share * value
    volts = {"0": number(0)}
    for pivot, line in reversed(order):
        volts[pivot] = (right[pivot] - sum(value * volts[k] for k, value in line.items() if k != pivot)) / line[pivot]
    names = ["0" if str(k) == case["reference"] else f"n{k}" for k in range(int(case["nodes"]))]
    return [volts[root(name)[0]] + root(name)[1] for name in names]


def process_seconds(case, empty):
    """Whole processes, each less the one on an empty netlist that ran beside it: reads the netlist, finds the operating point, prints nothing."""
    path = netlist(case, "op\n")
    return [run(path)[0] - run(empty)[0] for _ in range(PROCESSES)]


def settled(times):
    """The median, and whether it stands out of the scatter: more than three times its standard error, from the quartiles."""
    low, middle, high = statistics.quantiles(times, n=4)
    return middle, middle > 3 * 1.253 * (high - low) / 1.349 / len(times) ** 0.5


def repeated_seconds(case):
    """One operating point in a process that runs already: many against one, five times over."""
    count = REPEATS[int(case["branches"])]
    many, one = (f"repeat {n}\nop\ndestroy all\nend\n" for n in (count + 1, 1))
    times = []
    for _ in range(5):
        long = run(netlist(case, many))[0]
        times.append((long - run(netlist(case, one))[0]) / count)
    return statistics.median(times)


def main():
    with open(os.path.join(FOLDER, "cases.csv"), encoding="utf-8") as file:
        cases = list(csv.DictReader(file))
    version = re.search(r"ngspice-(\S+)", subprocess.run(["ngspice", "--version"], capture_output=True, text=True).stdout).group(1)
    today = datetime.date.today().isoformat()
    empty = written("empty.cir", "* empty\nV1 n1 0 1\nR1 n1 0 1\n" + OPTIONS + ".control\nop\n.endc\n.end\n")
    rows = []
    for case in cases:
        spice = answers(case)
        case["apart"] = max(abs(float(a) - b) for a, b in zip(spice, ours(case)))
        case["spice"] = spice
        if case["loads"] == "straight":
            case["exact"] = max(abs(float(decimal.Decimal(a) - b)) for a, b in zip(ours(case), exact(case)))
    for loads in ("straight", "mixed"):
        for size in ("10", "100", "1000"):
            group = [c for c in cases if c["set"] == "study" and c["loads"] == loads and c["branches"] == size]
            for case in group:
                case["process"], case["repeated"] = process_seconds(case, empty), repeated_seconds(case)
                print(f"{case['case']}: {case['nodes']} nodes, process {statistics.median(case['process']) * 1e3:.2f} ms, repeated {case['repeated'] * 1e3:.4f} ms, "
                      f"ours {float(case['anew']) / 1e3:.4f} ms, once more {float(case['again']) / 1e3:.4f} ms, apart {case['apart']:.1e} V", flush=True)
            process, stands = settled([t for c in group for t in c["process"]])
            process, repeated = 1e3 * process, 1e3 * statistics.median(c["repeated"] for c in group)
            anew, again = (statistics.median(float(c[column]) for c in group) / 1e3 for column in ("anew", "again"))
            first, ratio = (f"{process:.2g}", f"{process / again:.0f} and {process / anew:.0f}") if stands else ("not above the scatter", "")
            rows.append(f"| {loads} | {int(size):,} | {len(group)} | {first} | {repeated:.2g} | {again:.2g} | {anew:.2g} | {ratio} | {repeated / again:.1f} | {max(c['apart'] for c in group):.1e} |".replace(",", " "))
    nearest = max(c["exact"] for c in cases if "exact" in c)
    print(f"straight ones: Solve is within {nearest:.1e} V of 50 digits")
    data = [c for c in cases if c["set"] == "data"]
    print(f"twelve small ones: apart {max(c['apart'] for c in data):.1e} V")
    print("\n".join(rows))
    if "--data" in sys.argv:
        write_data(data, version, today)
    if "--no-docs" not in sys.argv:
        write_page(rows, nearest, version, today)


def write_data(data, version, today):
    shutil.rmtree(os.path.join(DATA, "ngspice"), ignore_errors=True)
    os.makedirs(os.path.join(DATA, "ngspice"))
    with open(os.path.join(DATA, "solved-by-ngspice.csv"), "w", encoding="utf-8", newline="\n") as file:
        file.write(f"""# Node voltages of twelve random harnesses of 8 to 52 branches as ngspice {version} gives them; written {today} by bash .ci/ngspice --data.
# Netlists in the folder ngspice beside this file, run with {OPTIONS.strip()}
# rounding: as printed, 15 digits; ngspice stops where no voltage moves by more than 1e-10 of itself.
# straight: every wire and load a resistance. mixed: wires that warm up, lamps, constant powers, constant currents. Seed and branches make the harness anew; nodes in its order, volts from its reference.
case,loads,seed,branches,node,volts
""")
        for case in data:
            shutil.copy(os.path.join(FOLDER, case["case"] + ".cir"), os.path.join(DATA, "ngspice"))
            with open(os.path.join(DATA, "ngspice", case["case"] + ".cir"), "a", encoding="utf-8", newline="\n") as added:
                added.write(OPTIONS + ".control\nset numdgt=15\nop\nprint all\n.endc\n.end\n")
            for node, volts in enumerate(case["spice"]):
                file.write(f"{case['case']},{case['loads']},{case['seed']},{case['branches']},{node},{volts}\n")


def write_page(rows, nearest, version, today):
    table = f"""<!-- ngspice -->
| loads | branches | harnesses | ngspice, a process, ms | ngspice, once more, ms | Solve, ms | Solve anew, ms | a process over Solve, over Solve anew | once more over Solve | furthest apart, V |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
""" + "\n".join(rows) + f"""

ngspice {version} and `Harness.Solve` on the same random harnesses, {today}, on a shared machine of two cores; `bash .ci/ngspice` measures it again. *Straight*: every wire and load a resistance. *Mixed*: wires that warm up, lamps, constant
powers and currents as behavioural sources. *A process*: wall time of ngspice started on the netlist, less that of ngspice started beside it on one resistance, {PROCESSES} times a harness, median of all of the row; it reads the netlist, which `Solve` does not. *Once more*: one more operating point in a
process that has found it before. *Solve*: median of 201 calls in a warm process, the harness known from the call before. *Solve anew*: the same in a load case that
is new to the harness, so that elements and order of elimination are found again. All are medians over the harnesses of the row. ngspice ran with reltol 1e-10 and gmin 1e-18. The straight harnesses are also worked out in 50 decimal digits:
`Solve` is within {nearest:.1e} V of that everywhere; the rest of the difference is the simulator's.
<!-- end ngspice -->
"""
    with open(PAGE, encoding="utf-8") as file:
        page = file.read()
    if "<!-- ngspice -->" in page:
        page = re.sub(r"<!-- ngspice -->.*<!-- end ngspice -->\n", lambda _: table, page, flags=re.DOTALL)
    else:
        page = page.rstrip("\n") + "\n\n**Against a circuit simulator.**\n\n" + table
    with open(PAGE, "w", encoding="utf-8", newline="\n") as file:
        file.write(page)


main()
