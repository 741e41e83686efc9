"""Takes the first example out of the readme inside the package: as a program, as a library's method, and what it should print."""
import re
import sys
import zipfile

with zipfile.ZipFile(sys.argv[1]) as package:
    readme = package.read("README.md").decode("utf-8")
code = re.search(r"```csharp\n(.*?)```", readme, re.S).group(1)
printed = re.search(r"prints\n+```\n(.*?)```", readme, re.S).group(1)
usings = "\n".join(line for line in code.splitlines() if re.match(r"using [\w.]+;$", line))
body = "\n".join(line for line in code.splitlines() if not re.match(r"using [\w.]+;$", line))
numbers = open("Readme/Numbers.cs", encoding="utf-8").read()
target = 'System.Linq.Enumerable.First(System.Reflection.CustomAttributeExtensions.GetCustomAttributes<System.Runtime.Versioning.TargetFrameworkAttribute>(typeof(CircuitDesigner).Assembly)).FrameworkName'

with open("Readme/Program.cs", "w", encoding="utf-8") as file:
    file.write(f'{usings}\nConsole.Error.WriteLine($"{{{target}}} on {{Environment.Version}}");\n{body}\nNumbers.Print(design);\n')
# netstandard2.0 has no System.Index.
body = re.sub(r"(\w+(?:\.\w+)*)\[\^1\]", r"\1[\1.Count - 1]", body)
with open("ThroughStandard/Bridge/Example.cs", "w", encoding="utf-8") as file:
    file.write(f"{usings}\nnamespace LowVoltage.Calc.Bridge;\npublic static class Example\n{{\npublic static string Target() => {target};\npublic static void Run()\n{{\n{body}\nNumbers.Print(design);\n}}\n}}\n")
with open("ThroughStandard/Bridge/Numbers.cs", "w", encoding="utf-8") as file:
    file.write(numbers)
with open("readme-output.txt", "w", encoding="utf-8") as file:
    file.write(printed)
