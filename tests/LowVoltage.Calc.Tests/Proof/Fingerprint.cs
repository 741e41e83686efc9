using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>A result as text with every bit of its numbers, some levels deep: two results with the same text are the same.</summary>
internal static class Fingerprint
{
    public static string Of(object? value)
    {
        StringBuilder text = new();
        Write(value, text, 0);
        return text.ToString();
    }

    /// <summary>What a call answers, or the refusal with its message.</summary>
    public static string OfCall(MethodInfo method, object? self, object?[] arguments)
    {
        object?[] copy = [.. arguments];
        try
        {
            string answer = Of(method.Invoke(self, copy));
            return method.GetParameters().Any(p => p.IsOut) ? answer + "; " + Of(copy) : answer;
        }
        catch (TargetInvocationException e)
        {
            return e.InnerException!.GetType().Name + ": " + e.InnerException.Message;
        }
    }

    private static void Write(object? value, StringBuilder text, int depth)
    {
        switch (value)
        {
            case null:
                text.Append("null");
                return;
            case string or Enum or bool or int:
                text.Append(CultureInfo.InvariantCulture, $"{value}");
                return;
            case double number:
                text.Append(CultureInfo.InvariantCulture, $"{BitConverter.DoubleToInt64Bits(number):x}");
                return;
            case IQuantity quantity:
                text.Append(CultureInfo.InvariantCulture, $"{BitConverter.DoubleToInt64Bits((double)quantity.Value):x} {quantity.Unit}");
                return;
            case IEnumerable items:
                text.Append('[');
                foreach (object? item in items.Cast<object?>().Take(20))
                {
                    Write(item, text, depth + 1);
                    text.Append(',');
                }

                text.Append(']');
                return;
        }

        if (depth > 3 || value is Calc.Circuits.OperatingPoint { Exists: false } or CircuitRequirements or DesignRules)
        {
            return;
        }

        text.Append(value.GetType().Name).Append('{');
        if (value.GetType().Namespace?.StartsWith("LowVoltage.Calc", StringComparison.Ordinal) == true)
        {
            foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0))
            {
                text.Append(property.Name).Append('=');
                Write(property.GetValue(value), text, depth + 1);
                text.Append(';');
            }
        }

        text.Append('}');
    }
}
