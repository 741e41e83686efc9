using FsCheck;
using FsCheck.Fluent;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>A short circuit with log-uniform size and time: 0.05 mm² to 200 mm², 1 ms to 5 s, −40 °C to 150 °C, rise 0.001 K to 800 K.</summary>
public sealed record AdiabaticCase(double SquareMillimeters, double Seconds, double Initial, double Rise)
{
    public Area Area => Area.FromSquareMillimeters(SquareMillimeters);

    public Duration Duration => Duration.FromSeconds(Seconds);

    public Temperature Start => Temperature.FromDegreesCelsius(Initial);

    public Temperature Limit => Temperature.FromDegreesCelsius(Initial + Rise);
}

public static class AdiabaticCases
{
    public static Arbitrary<AdiabaticCase> Case() =>
        (from area in LogUniform(0.05, 200)
         from seconds in LogUniform(1e-3, 5)
         from initial in Gen.Choose(-400, 1500).Select(i => i / 10.0)
         from rise in LogUniform(1e-3, 800)
         select new AdiabaticCase(area, seconds, initial, rise)).ToArbitrary();

    public static Gen<double> LogUniform(double least, double most) =>
        Gen.Choose(0, 1_000_000).Select(i => least * Math.Pow(most / least, i / 1e6));
}
