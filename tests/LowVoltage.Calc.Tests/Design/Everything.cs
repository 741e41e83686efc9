using System.Collections;
using System.Reflection;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Every number in a result, found by walking its public properties.</summary>
internal static class Everything
{
    /// <summary>All doubles, with where they stand; a text is looked at for NaN and infinity too.</summary>
    public static List<(string Path, double Value)> Numbers(object root)
    {
        List<(string, double)> found = [];
        Walk(root, "", found, new HashSet<object>(ReferenceEqualityComparer.Instance), 0);
        return found;
    }

    public static void AssertFinite(CircuitDesign design)
    {
        List<(string Path, double Value)> numbers = Numbers(design);
        Assert.True(numbers.Count > 20, "only " + numbers.Count + " numbers were found");
        foreach ((string path, double value) in numbers)
        {
            Assert.True(double.IsFinite(value) && Math.Abs(value) < 1e20, path + " = " + value.ToString("R", System.Globalization.CultureInfo.InvariantCulture) + " in " + design);
        }
    }

    private static void Walk(object? value, string path, List<(string, double)> found, HashSet<object> seen, int depth)
    {
        switch (value)
        {
            case null or bool or char or Enum or int or long or sbyte or byte:
                return;
            case double number:
                found.Add((path, number));
                return;
            case decimal number:
                found.Add((path, (double)number));
                return;
            case string text:
                Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
                return;
            case IQuantity quantity:
                found.Add((path, quantity.As(quantity.Unit)));
                return;
            case IEnumerable list:
                int i = 0;
                foreach (object? item in list)
                {
                    Walk(item, path + "[" + i++ + "]", found, seen, depth + 1);
                }

                return;
        }

        Type type = value.GetType();
        if (depth > 12 || type.Assembly != typeof(CircuitDesign).Assembly || (!type.IsValueType && !seen.Add(value)))
        {
            return;
        }

        Walk(value.ToString(), path + ".ToString()", found, seen, depth + 1);
        foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length == 0 && Read(property, value) is { } inner)
            {
                Walk(inner, path + "." + property.Name, found, seen, depth + 1);
            }
        }
    }

    // A point that does not exist refuses to be read, by contract.
    private static object? Read(PropertyInfo property, object value)
    {
        try
        {
            return property.GetValue(value);
        }
        catch (TargetInvocationException thrown) when (thrown.InnerException is InvalidOperationException && value is Calc.Circuits.OperatingPoint { Exists: false })
        {
            return null;
        }
    }
}
