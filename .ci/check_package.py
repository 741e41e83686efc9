"""Lists a package and its symbols, and fails on anything that is not expected in them. Called by .ci/pack."""
import glob
import re
import sys
import xml.etree.ElementTree as xml
import zipfile

TARGETS = ["net10.0", "net8.0", "netstandard2.0"]
DEPENDENCIES = {
    "net10.0": {"UnitsNet", "MathNet.Numerics"},
    "net8.0": {"UnitsNet", "MathNet.Numerics"},
    ".NETStandard2.0": {"UnitsNet", "MathNet.Numerics", "System.Memory"},
}
FRAME = ["[Content_Types].xml", "_rels/.rels", "LowVoltage.Calc.nuspec"]
CORE = re.compile(r"package/services/metadata/core-properties/\w+\.psmdcp")
PACKAGE = FRAME + ["README.md", "icon.png"] + [f"lib/{t}/LowVoltage.Calc.{e}" for t in TARGETS for e in ("dll", "xml")]
SYMBOLS = FRAME + [f"lib/{t}/LowVoltage.Calc.pdb" for t in TARGETS]
REQUIRED = ["id", "version", "authors", "license", "icon", "readme", "description", "releaseNotes", "copyright", "tags", "repository"]
CAUTIONS = ["Batteries burn and explode when shorted", "whoever installs a circuit is responsible for it"]

faults = []


def check(right, fault):
    if not right:
        faults.append(fault)


def only(pattern):
    found = glob.glob(f"{sys.argv[1]}/{pattern}")
    assert len(found) == 1, f"{pattern}: {found}"
    return found[0]


def entries(path, expected):
    with zipfile.ZipFile(path) as package:
        names = package.namelist()
        print(f"\n{path.rsplit('/', 1)[-1]}")
        for info in sorted(package.infolist(), key=lambda i: i.filename):
            print(f"  {info.file_size:>9} {info.compress_size:>9}  {info.filename}")
        unexpected = [n for n in names if n not in expected and not CORE.fullmatch(n)]
        check(not unexpected, f"{path}: not expected: {unexpected}")
        missing = [n for n in expected if n not in names]
        check(not missing, f"{path}: missing: {missing}")
        return {n: package.read(n) for n in names}


def metadata(spec):
    namespace = re.match(r"\{.*\}", spec.tag).group(0)
    data = spec.find(namespace + "metadata")
    for name in REQUIRED:
        element = data.find(namespace + name)
        check(element is not None and (name == "repository" or (element.text or "").strip()), f"nuspec: no {name}")
    licence = data.find(namespace + "license")
    check(licence.get("type") == "expression" and licence.text == "MIT", "nuspec: the licence is not the expression MIT")
    repository = data.find(namespace + "repository")
    check(repository is not None and re.fullmatch("[0-9a-f]{40}", repository.get("commit", "")), "nuspec: no commit")
    check(repository is None or repository.get("url", "https://").startswith("https://"), "nuspec: the repository's address is not public")
    groups = {g.get("targetFramework"): {d.get("id"): d.get("version") for d in g} for g in data.iter(namespace + "group")}
    print("\ndependencies")
    for target, packages in sorted(groups.items()):
        print(f"  {target}: " + ", ".join(f"{i} {v}" for i, v in sorted(packages.items())))
    check({t: set(p) for t, p in groups.items()} == DEPENDENCIES, f"nuspec: dependencies {groups}")


package, symbols = only("*.nupkg"), only("*.snupkg")
files = entries(package, PACKAGE)
metadata(xml.fromstring(files["LowVoltage.Calc.nuspec"]))
readme = files["README.md"].decode("utf-8")
for caution in CAUTIONS:
    check(caution in readme, f"the readme lacks the caution \"{caution}\"")
check(files["icon.png"][:8] == b"\x89PNG\r\n\x1a\n" and len(files["icon.png"]) < 1_000_000, "the icon is no PNG below 1 MB")
entries(symbols, SYMBOLS)
for target in TARGETS:
    for path in (b"/tmp/", b"/home/", b"C:\\Users"):
        check(path not in files[f"lib/{target}/LowVoltage.Calc.dll"], f"{target}: a path of the machine that built it, {path.decode()}")
for fault in faults:
    print("FAULT: " + fault)
sys.exit(bool(faults))
