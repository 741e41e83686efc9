using FsCheck;
using FsCheck.Fluent;

namespace LowVoltage.Calc.Tests.Circuits;

/// <summary>A circuit with log-uniform numbers: 5 V to 60 V, 0.1 mΩ to 0.3 Ω in the source, 24 AWG to 4/0, 0.1 m to 50 m, 0.05 A to 500 A.</summary>
public sealed record RandomCircuit(
    double Volts, double SourceOhms, int Awg, double Feed, double Return, double Ambient, double RatedAmperes, double Rise, double Amperes, double JointOhms)
{
    public static Arbitrary<RandomCircuit> Arbitrary() =>
        Gen.Choose(0, 1_000_000).ArrayOf(10).Select(n => Of([.. n.Select(x => x / 1e6)])).ToArbitrary();

    public double Ohms20 => 1 / 58.0 / (Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - Awg) / 39.0), 2)) * (Feed + Return);

    // Written out here again, apart from the library: IEC 60028 copper.
    public double CelsiusAt(double amperes) => Ambient + (Rise * amperes * amperes / (RatedAmperes * RatedAmperes));

    public double OhmsAt(double amperes) => SourceOhms + JointOhms + (Ohms20 * (1 + (0.00393 * (CelsiusAt(amperes) - 20))));

    private static RandomCircuit Of(double[] u) => new(
        Log(u[0], 5, 60), Log(u[1], 1e-4, 0.3), -3 + (int)(u[2] * 27), Log(u[3], 0.1, 50), Log(u[4], 0.1, 50), -30 + (u[5] * 110),
        Log(u[6], 1, 300), 5 + (u[7] * 70), Log(u[8], 0.05, 500), Log(u[9], 1e-4, 0.05));

    private static double Log(double u, double least, double most) => least * Math.Pow(most / least, u);
}
