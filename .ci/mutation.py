"""mutation.py FOLDER [ROOM ...]: tries the mutants of some rooms, or of all, and prints the score of each room tried on these sources so far."""
import collections
import concurrent.futures
import json
import os
import pathlib
import subprocess
import sys

FOLDER = pathlib.Path(sys.argv[1])
ROOMS = sys.argv[2:]
WORKERS = int(os.environ.get("MUTATION_WORKERS", "2"))
TESTS = "LowVoltage.Calc.Tests"
MAP = FOLDER / "map.txt"
LINE = [
    "dotnet", "exec", "--runtimeconfig", f"{TESTS}.runtimeconfig.json", "--depsfile", f"{TESTS}.deps.json", "Mutation.dll",
]
LIMITS = {"DOTNET_GCHeapHardLimit": "0x100000000", "MUTATION_BUDGET": os.environ.get("MUTATION_BUDGET", "3")}


def run(*arguments, log="/dev/null"):
    with open(log, "a") as out:
        return subprocess.run([*LINE, *map(str, arguments)], cwd=FOLDER / "bin", env=os.environ | LIMITS, stdout=out, stderr=out).returncode


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
    while ids:
        todo.write_text("\n".join(map(str, ids)))
        before = len(read(results))
        code = run("run", f"{TESTS}.dll", MAP, todo, results, log=FOLDER / f"worker{worker}.log")
        done = read(results)
        ids = [i for i in ids if i not in done]
        hung = len(done) > before and list(done.values())[-1] == ["Timeout"]
        if code and ids and not hung:
            with open(results, "a") as out:
                out.write(f"{ids[0]}\tCrashed\n")
            ids = ids[1:]
        elif not code:
            break
    return read(results)


def try_fresh(number, all_mutants):
    same, out = FOLDER / f"same{number}", FOLDER / f"fresh{number}"
    same.write_text(" ".join(str(i) for i, (path, *_) in all_mutants.items() if path == all_mutants[number][0]))
    code = run("fresh", f"{TESTS}.dll", MAP, number, same, out)
    verdict = read(out).get(number, ["Crashed"] if code else ["NoCoverage"])
    same.unlink()
    out.unlink(missing_ok=True)
    return number, verdict


def main():
    os.chdir(FOLDER)
    if not MAP.exists() and (run("switch", "LowVoltage.Calc.dll") or run("map", f"{TESTS}.dll", MAP, log=FOLDER / "map.log")):
        sys.exit("the tests did not run: see map.log")
    lines = MAP.read_text().splitlines()
    cold = set(map(int, lines[0].split()))
    warm = {int(i) for line in lines[1:] for i in line.split("\t")[2].split()}
    made = mutants()
    chosen = {i: m for i, m in made.items() if not ROOMS or room_of(m[0]) in ROOMS}
    live = sorted((i for i in chosen if i in warm), key=lambda i: (chosen[i][0], i))
    static = [i for i in chosen if i in cold - warm]
    print(f"{len(chosen)} mutants: {len(live)} in code, {len(static)} in the making of static data, {len(chosen) - len(live) - len(static)} not reached", flush=True)

    table = FOLDER / "verdicts.tsv"
    before = [line.split("\t") for line in table.read_text().splitlines()] if table.exists() else []
    verdicts = {int(number): rest for number, _, _, *rest in before}
    for number in chosen:
        verdicts.pop(number, None)
    earlier = set(verdicts)
    with concurrent.futures.ThreadPoolExecutor(WORKERS) as pool:
        parts = [live[len(live) * k // WORKERS:len(live) * (k + 1) // WORKERS] for k in range(WORKERS)]
        for part in pool.map(try_all, range(WORKERS), parts):
            verdicts |= part
        verdicts |= dict(pool.map(lambda i: try_fresh(i, chosen), static))

    rooms = collections.defaultdict(collections.Counter)
    with open(FOLDER / "verdicts.tsv", "w") as table, open(FOLDER / "survivors.txt", "w") as survivors:
        for number, (path, m, source) in sorted(made.items(), key=lambda x: (x[1][0], x[0])):
            if number not in chosen and number not in earlier:
                continue
            verdict, *why = verdicts.get(number, ["NoCoverage"])
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
        text.append(f"{room:12} {100 * noticed / max(1, sum(counts.values())):5.1f} %   {dict(counts)}")
    (FOLDER / "score.txt").write_text("\n".join(text) + "\n")
    print("\n".join(text))


main()
