"""mutation.py FOLDER [ROOM ...]: tries the mutants of some rooms, or of all, and prints the score of each room tried on these sources so far.

With MUTATION_MINUTES set it stops then. The order is shuffled, the same each time, so that what has been tried by then is a fair sample; the next call goes on from there."""
import collections
import concurrent.futures
import json
import os
import pathlib
import random
import subprocess
import sys
import time

FOLDER = pathlib.Path(sys.argv[1])
ROOMS = sys.argv[2:]
WORKERS = int(os.environ.get("MUTATION_WORKERS", "2"))
TESTS = "LowVoltage.Calc.Tests"
MAP = FOLDER / "map.txt"
END = STATIC_END = float("inf")
MINUTES = float(os.environ.get("MUTATION_MINUTES", "inf"))
LINE = [
    "dotnet", "exec", "--runtimeconfig", f"{TESTS}.runtimeconfig.json", "--depsfile", f"{TESTS}.deps.json", "Mutation.dll",
]
LIMITS = {"DOTNET_GCHeapHardLimit": "0x100000000", "MUTATION_BUDGET": os.environ.get("MUTATION_BUDGET", "3")}


def run(*arguments, log="/dev/null", end=float("inf")):
    with open(log, "a") as out:
        process = subprocess.Popen([*LINE, *map(str, arguments)], cwd=FOLDER / "bin", env=os.environ | LIMITS, stdout=out, stderr=out)
        try:
            return process.wait(None if end == float("inf") else max(0, end - time.monotonic()))
        except subprocess.TimeoutExpired:
            process.kill()
            return process.wait()


def room_of(path):
    inside = path.split("LowVoltage.Calc/")[-1]
    return inside.split("/")[0] if "/" in inside else "(root)"


def span(mutant):
    at = mutant["location"]
    return (at["start"]["line"], at["start"]["column"]), (at["end"]["line"], at["end"]["column"])


def holds_another(mutant, others):
    """A block whose parts have mutants of their own is left out, as dotnet-stryker does."""
    start, end = span(mutant)
    return any(o is not mutant and start <= span(o)[0] and span(o)[1] <= end and span(o) != (start, end) for o in others)


def mutants():
    found = {}
    for path, file in json.load(open(FOLDER / "mutants.json"))["files"].items():
        made = [m for m in file["mutants"] if m["status"] != "CompileError"]
        for m in made:
            if not (m["mutatorName"].startswith("Block removal") and holds_another(m, made)):
                found[int(m["id"])] = (path, m, file["source"].split("\n"))
    return found


def read(path):
    verdicts = {}
    if path.exists():
        for line in path.read_text().splitlines():
            number, *rest = line.split("\t")
            if number == "-1":
                print("a mutant left something behind:", line)
            else:
                verdicts[int(number)] = rest
    return verdicts


def try_all(worker, ids):
    """In one process until a test hangs or the process dies; then in a new one from there."""
    results, todo = FOLDER / f"results{worker}.tsv", FOLDER / f"todo{worker}.txt"
    results.unlink(missing_ok=True)
    while ids and time.monotonic() < END:
        todo.write_text("\n".join(map(str, ids)))
        before = len(read(results))
        code = run("run", f"{TESTS}.dll", MAP, todo, results, log=FOLDER / f"worker{worker}.log", end=END)
        done = read(results)
        ids = [i for i in ids if i not in done]
        hung = len(done) > before and list(done.values())[-1] == ["Timeout"]
        if code and ids and not hung and time.monotonic() < END:
            with open(results, "a") as out:
                out.write(f"{ids[0]}\tCrashed\n")
            ids = ids[1:]
        elif not code:
            break
    return read(results)


def try_fresh(number, all_mutants):
    if time.monotonic() > STATIC_END:
        return number, None
    same, out = FOLDER / f"same{number}", FOLDER / f"fresh{number}"
    same.write_text(" ".join(str(i) for i, (path, *_) in all_mutants.items() if path == all_mutants[number][0]))
    code = run("fresh", f"{TESTS}.dll", MAP, number, same, out)
    verdict = read(out).get(number, ["Crashed"] if code else ["NoCoverage"])
    same.unlink()
    out.unlink(missing_ok=True)
    return number, verdict


def main():
    global END, STATIC_END
    os.chdir(FOLDER)
    if not MAP.exists() and (run("switch", "LowVoltage.Calc.dll") or run("map", f"{TESTS}.dll", MAP, log=FOLDER / "map.log")):
        sys.exit("the tests did not run: see map.log")
    lines = MAP.read_text().splitlines()
    cold = set(map(int, lines[0].split()))
    warm = {int(i) for line in lines[1:] for i in line.split("\t")[2].split()}
    made = mutants()
    chosen = {i: m for i, m in made.items() if not ROOMS or room_of(m[0]) in ROOMS}
    table = FOLDER / "verdicts.tsv"
    before = [line.split("\t") for line in table.read_text().splitlines()] if table.exists() else []
    verdicts = {int(number): rest for number, _, _, *rest in before}
    order = [i for i in sorted(chosen) if i not in verdicts]
    random.Random(1).shuffle(order)
    live, static = [i for i in order if i in warm], [i for i in order if i in cold - warm]
    for number in order:
        if number not in warm and number not in cold:
            verdicts[number] = ["NoCoverage"]
    print(f"{len(order)} mutants to try: {len(live)} in code, {len(static)} in the making of static data, {len(order) - len(live) - len(static)} not reached", flush=True)

    # Those of static data take a process each: they get a third of the time, where it is limited.
    END, STATIC_END = time.monotonic() + 60 * MINUTES, time.monotonic() + 20 * MINUTES
    with concurrent.futures.ThreadPoolExecutor(WORKERS) as pool:
        verdicts |= {number: verdict for number, verdict in pool.map(lambda i: try_fresh(i, chosen), static) if verdict}
        for part in pool.map(try_all, range(WORKERS), [live[k::WORKERS] for k in range(WORKERS)]):
            verdicts |= part

    rooms = collections.defaultdict(collections.Counter)
    every = collections.Counter(room_of(path) for path, *_ in made.values())
    every["all"] = sum(every.values())
    with open(FOLDER / "verdicts.tsv", "w") as table, open(FOLDER / "survivors.txt", "w") as survivors:
        for number, (path, m, source) in sorted(made.items(), key=lambda x: (x[1][0], x[0])):
            if number not in verdicts:
                continue
            verdict, *why = verdicts[number]
            rooms[room_of(path)][verdict] += 1
            (first, column), (last, end) = span(m)
            was = source[first - 1][column - 1:end - 1 if last == first else None]
            where = f"{path.split('LowVoltage.Calc/')[-1]}:{first}"
            table.write("\t".join([str(number), where, m["mutatorName"], verdict, *why]) + "\n")
            if verdict in ("Survived", "NoCoverage"):
                now = " ".join(m.get("replacement", "").split())
                survivors.write(f"{where} [{m['mutatorName']}] {verdict}: {was[:120]}  =>  {now[:120]}\n")
    total = collections.Counter()
    text = []
    for room, counts in [*sorted(rooms.items()), ("all", total)]:
        total += counts if room != "all" else collections.Counter()
        noticed = counts["Killed"] + counts["Timeout"] + counts["Crashed"]
        # Those that no test reaches are all known at once, the others may be a sample.
        missed, reached = counts["NoCoverage"], sum(counts.values()) - counts["NoCoverage"]
        share = noticed / max(1, reached) * (1 - (missed / max(1, every[room])))
        text.append(f"{room:12} {100 * share:5.1f} %   {sum(counts.values())} of {every[room]} tried   {dict(counts)}")
    (FOLDER / "score.txt").write_text("\n".join(text) + "\n")
    print("\n".join(text))


main()
