using System.Reflection;
using Xunit.Sdk;

namespace CircuitPage.Tests;

/// <summary>Each of the addresses at 1280 and 390 px, light and dark.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class CombinatorialDataAttribute(string[] addresses) : DataAttribute
{
    private static readonly int[] Widths = [1280, 390];
    private static readonly ColorScheme[] Schemes = [ColorScheme.Light, ColorScheme.Dark];

    public string[] Addresses { get; } = addresses;

    public override IEnumerable<object[]> GetData(MethodInfo testMethod) =>
        from address in Addresses from width in Widths from scheme in Schemes select new object[] { address, width, scheme };
}
