using System.Reflection;
using LowVoltage.Calc.Tests.Docs;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>The list of what the build refuses in the library: that it names members which exist, for every quantity of the public surface.</summary>
public class BannedSymbolsTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(DocsFolder.Root, "src", "LowVoltage.Calc", "BannedSymbols.txt"));

    [Fact]
    public void EveryQuantityOfTheSurface_HasItsLines()
    {
        Type[] quantities = [.. typeof(CircuitDesigner).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetMethods().SelectMany(method => method.GetParameters().Select(parameter => parameter.ParameterType).Append(method.ReturnType)))
            .Select(type => Nullable.GetUnderlyingType(type) ?? type)
            .Where(type => type.Namespace == "UnitsNet" && type.IsValueType).Distinct()];
        Assert.True(quantities.Length > 20, $"{quantities.Length}");
        Assert.All(quantities, quantity => Assert.Equal(10, Lines.Count(line => line.StartsWith($"M:UnitsNet.{quantity.Name}.", StringComparison.Ordinal))));
    }

    [Fact]
    public void EveryLine_NamesAMemberThatExists_AndSaysWhy()
    {
        Assembly units = typeof(Length).Assembly;
        foreach (string line in Lines)
        {
            string[] parts = line.Split(';');
            Assert.Equal(2, parts.Length);
            Assert.NotEmpty(parts[1]);
            string name = parts[0][2..].Split('(')[0];
            if (parts[0][0] == 'T')
            {
                Assert.NotNull(units.GetType(name));
                continue;
            }

            int dot = name.LastIndexOf('.'), parameters = parts[0].Contains('(', StringComparison.Ordinal) ? parts[0].Split(',').Length : 0;
            Assert.Contains(units.GetType(name[..dot], throwOnError: true)!.GetMethods(), method => method.Name == name[(dot + 1)..] && method.GetParameters().Length == parameters);
        }
    }
}
