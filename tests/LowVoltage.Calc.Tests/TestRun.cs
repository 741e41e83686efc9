using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Runtime.Versioning;

namespace LowVoltage.Calc.Tests;

/// <summary>
/// The suite runs on the library's net10.0 build in whatever culture there is; <c>bash .ci/other-builds</c> asks for another build, or names a culture in
/// LOWVOLTAGE_TEST_CULTURE. These tests fail when the run is not the one that was asked for.
/// </summary>
public class TestRun
{
    private static readonly string? AskedCulture = Environment.GetEnvironmentVariable("LOWVOLTAGE_TEST_CULTURE");

    // For every test, whatever its class: before anything of this assembly runs.
    [ModuleInitializer]
    internal static void SetCulture()
    {
        if (AskedCulture is not null)
        {
            CultureInfo culture = Culture(AskedCulture);
            CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = culture;
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = culture;
        }
    }

    [Fact]
    public void Culture_IsTheOneAskedFor() => Assert.Equal(AskedCulture ?? CultureInfo.CurrentCulture.Name, CultureInfo.CurrentCulture.Name);

    [Fact]
    public void Culture_DoesToNumbersWhatItShould()
    {
        // Without culture data every culture would be the invariant one, and the runs would prove nothing.
        Assert.Equal("1,5", 1.5.ToString(Culture("de-DE")));
        Assert.Equal("1,5", 1.5.ToString(Culture("tr-TR")));
        Assert.NotEqual(CultureInfo.InvariantCulture.NumberFormat.PercentSymbol, Culture("ar-SA").NumberFormat.PercentSymbol);
        Assert.Equal("ı", "I".ToLower(Culture("tr-TR")));
    }

    [Fact]
    public void Library_IsTheBuildAskedFor()
    {
        string asked = typeof(TestRun).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "LibraryBuild").Value ?? "";
        string target = typeof(CircuitDesigner).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName;
        (string expected, int runtime) = asked switch
        {
            "netstandard2.0" => (".NETStandard,Version=v2.0", 10),
            "net8.0" => (".NETCoreApp,Version=v8.0", 8),
            _ => (".NETCoreApp,Version=v10.0", 10),
        };
        Assert.Equal(expected, target);
        Assert.Equal(runtime, Environment.Version.Major);
    }

    private static CultureInfo Culture(string name) => CultureInfo.GetCultureInfo(name, predefinedOnly: true);
}
