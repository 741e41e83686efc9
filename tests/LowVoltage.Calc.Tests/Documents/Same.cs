using System.Collections;
using System.Reflection;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Two objects compared field by field, private ones too: what equality by value means where a type has none.</summary>
internal static class Same
{
    // Worked out when first asked for; not what an object is.
    private static readonly string[] Remembered = ["last", "kernel", "graph", "cache"];

    /// <summary>The way to the first field that differs; empty where none does. Doubles are compared to the bit.</summary>
    internal static string Difference(object? one, object? other) => Find(one, other, "", []);

    private static string Find(object? one, object? other, string path, HashSet<(object, object)> seen)
    {
        if (ReferenceEquals(one, other))
        {
            return "";
        }

        if (one is IEnumerable and not string && other is IEnumerable and not string)
        {
            // A list is what it holds, whether it is an array or wraps one.
            return seen.Add((one, other)) ? InList([.. ((IEnumerable)one).Cast<object?>()], [.. ((IEnumerable)other).Cast<object?>()], path, seen) : "";
        }

        if (one is null || other is null || one.GetType() != other.GetType())
        {
            return $"{path}: {one?.ToString() ?? "null"} is not {other?.ToString() ?? "null"}";
        }

        Type type = one.GetType();
        if (type.IsPrimitive || type.IsEnum || one is string or decimal)
        {
            return one.Equals(other) ? "" : $"{path}: {one} is not {other}";
        }

        if (!type.IsValueType && !seen.Add((one, other)))
        {
            return "";
        }

        return InFields(one, other, type, path, seen);
    }

    private static string InList(object?[] one, object?[] other, string path, HashSet<(object, object)> seen)
    {
        if (one.Length != other.Length)
        {
            return $"{path}: {one.Length} is not {other.Length} entries";
        }

        for (int i = 0; i < one.Length; i++)
        {
            if (Find(one[i], other[i], $"{path}[{i}]", seen) is { Length: > 0 } difference)
            {
                return difference;
            }
        }

        return "";
    }

    private static string InFields(object one, object other, Type type, string path, HashSet<(object, object)> seen)
    {
        for (Type? level = type; level is not null && level != typeof(object); level = level.BaseType)
        {
            foreach (FieldInfo field in level.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            {
                if (!Remembered.Contains(field.Name) && Find(field.GetValue(one), field.GetValue(other), $"{path}.{field.Name}", seen) is { Length: > 0 } difference)
                {
                    return difference;
                }
            }
        }

        return "";
    }
}
