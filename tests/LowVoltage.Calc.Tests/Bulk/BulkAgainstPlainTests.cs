using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Bulk;

/// <summary>Every bulk call against its formula written out in plain doubles, constants of the standards typed in here.</summary>
public class BulkAgainstPlainTests
{
    private const int Cases = 3000;
    private static readonly ConductorMaterial Copper = ConductorMaterial.Copper;

    [Fact]
    public void Resistance_AsThePlainFormula()
    {
        double[] r20 = Log(1e-5, 1, 1), celsius = Even(-90, 900, 2), result = new double[Cases];
        BulkResistance.PerMeter(Copper, r20, celsius, result);
        for (int i = 0; i < Cases; i++)
        {
            // IEC 60028: 0.003 93 per kelvin at 20 °C.
            Near(r20[i] * (1 + (0.00393 * (celsius[i] - 20))), result[i], 4);
        }

    }

    [Fact]
    public void VoltageDrop_AsThePlainFormula()
    {
        double[] f = Log(1e-5, 1, 3), lf = Log(0.01, 1000, 4), b = Log(1e-5, 1, 5), lb = Log(0.01, 1000, 6), amps = Log(1e-3, 1000, 7), result = new double[Cases], ohms = new double[Cases];
        BulkVoltageDrop.OutAndBack(f, lf, b, lb, amps, result);
        BulkResistance.OutAndBack(f, lf, b, lb, ohms);
        for (int i = 0; i < Cases; i++)
        {
            Near(((f[i] * lf[i]) + (b[i] * lb[i])) * amps[i], result[i], 4);
            Near((f[i] * lf[i]) + (b[i] * lb[i]), ohms[i], 2);
        }

        BulkVoltageDrop.Along(f, lf, amps, result);
        for (int i = 0; i < Cases; i++)
        {
            Near(f[i] * lf[i] * amps[i], result[i], 2);
        }
    }

    [Fact]
    public void LeastArea_AsThePlainFormula()
    {
        double[] celsius = Even(-90, 900, 8), l = Log(0.01, 1000, 9), amps = Log(1e-3, 1000, 10), volts = Log(0.01, 50, 11), result = new double[Cases];
        BulkVoltageDrop.LeastArea(Copper, celsius, l, amps, volts, result);
        for (int i = 0; i < Cases; i++)
        {
            // IEC 60028: 1/58 Ω·mm²/m.
            Near(1 / 58.0 * (1 + (0.00393 * (celsius[i] - 20))) * l[i] * amps[i] / volts[i], result[i], 8);
        }
    }

    [Fact]
    public void LoadVoltage_AsThePlainFormula()
    {
        double[] volts = Log(5, 60, 12), ohms = Log(1e-4, 3, 13), amps = Log(0.01, 100, 14), watts = Log(0.1, 1000, 15), load = Log(0.05, 1000, 16);
        double[] current = new double[Cases], power = new double[Cases], resistance = new double[Cases];
        int noCurrent = BulkLoadVoltage.ConstantCurrent(volts, ohms, amps, current), noPower = BulkLoadVoltage.ConstantPower(volts, ohms, watts, power);
        BulkLoadVoltage.Resistance(volts, ohms, load, resistance);
        Assert.InRange(noCurrent, 100, Cases - 100);
        Assert.InRange(noPower, 100, Cases - 100);
        Assert.Equal(noCurrent, current.Count(u => u == 0));
        Assert.Equal(noPower, power.Count(u => u == 0));
        for (int i = 0; i < Cases; i++)
        {
            double left = volts[i] - (ohms[i] * amps[i]), d = (volts[i] * volts[i]) - (4 * ohms[i] * watts[i]);
            Assert.Equal(left > 0, current[i] > 0);
            Near(Math.Max(left, 0), current[i], 0, 4e-16 * volts[i]);
            Assert.True(Math.Abs(d) < 1e-12 * volts[i] * volts[i] || (d > 0) == (power[i] > 0));
            Near(d > 0 ? 0.5 * (volts[i] + Math.Sqrt(d)) : 0, power[i], 4);
            Near(volts[i] * load[i] / (load[i] + ohms[i]), resistance[i], 4);

            // A real point satisfies the circuit: what the load takes comes through the resistance.
            double drawn = power[i] > 0 ? watts[i] / power[i] : 0;
            Assert.True(power[i] == 0 || Math.Abs(volts[i] - (ohms[i] * drawn) - power[i]) <= 1e-12 * volts[i] * volts[i] / power[i]);
        }
    }

    [Fact]
    public void ProspectiveCurrent_AsThePlainFormula()
    {
        double[] volts = Log(5, 60, 17), inner = Log(1e-4, 0.1, 18), path = Log(1e-4, 3, 19), least = new double[Cases], greatest = new double[Cases];
        BulkProspectiveCurrent.Least(volts, inner, path, least);
        BulkProspectiveCurrent.Greatest(volts, inner, path, greatest);
        Assert.Equal(least, greatest);
        for (int i = 0; i < Cases; i++)
        {
            Near(volts[i] / (inner[i] + path[i]), least[i], 0);
        }
    }

    [Fact]
    public void ConductorTemperature_AsThePlainFormula()
    {
        double[] ambient = [.. Enumerable.Repeat(30.0, Cases)], amps = Log(0.01, 60, 20), result = new double[Cases];
        BulkConductorTemperature.AtCurrent(32, 40, ambient, amps, result);
        for (int i = 0; i < Cases; i++)
        {
            Near(30 + (40 * (amps[i] / 32) * (amps[i] / 32)), result[i], 2);
        }
    }

    [Fact]
    public void Adiabatic_AsThePlainFormula()
    {
        double[] area = Log(0.1, 120, 21), amps = Log(10, 5000, 22), seconds = Log(1e-3, 5, 23), start = Even(-40, 150, 24);
        double[] final = new double[Cases], time = new double[Cases], joules = new double[Cases], least = new double[Cases], current = new double[Cases];
        int melted = BulkAdiabaticHeating.FinalTemperature(Copper, area, amps, seconds, start, final);
        BulkAdiabaticHeating.TimeToReach(Copper, 160, area, amps, start, time);
        BulkAdiabaticHeating.WithstandJouleIntegral(Copper, 160, area, start, joules);
        BulkAdiabaticHeating.LeastArea(Copper, 160, amps, seconds, start, least);
        BulkAdiabaticHeating.GreatestCurrent(Copper, 160, area, seconds, start, current);
        Assert.InRange(melted, 100, Cases - 100);
        Assert.Equal(melted, final.Count(c => c == 1083 || c.Equals(Copper.MeltingPoint.DegreesCelsius)));

        // IEC 60949 for copper: Qc 3.45e-3 J/(K·mm³), β 234.5 °C, ρ20 17.241e-6 Ω·mm: K² = Qc(β + 20)/ρ20.
        double beta = 234.5, k2 = 3.45e-3 * (beta + 20) / (1 / 58.0 * 1e-3);
        for (int i = 0; i < Cases; i++)
        {
            double log = Math.Log((160 + beta) / (start[i] + beta)), j = amps[i] * amps[i] * seconds[i];
            double hot = ((start[i] + beta) * Math.Exp(j / (k2 * area[i] * area[i]))) - beta;
            Assert.Equal(Math.Min(hot, Copper.MeltingPoint.DegreesCelsius), final[i], 1e-9 * (Math.Min(hot, 2000) + beta));
            Near(k2 * area[i] * area[i] * log / (amps[i] * amps[i]), time[i], 0, 1e-11 * time[i]);
            Near(k2 * area[i] * area[i] * log, joules[i], 0, 1e-11 * joules[i]);
            Near(Math.Sqrt(j / (k2 * log)), least[i], 0, 1e-11 * least[i]);
            Near(Math.Sqrt(k2 * log / seconds[i]) * area[i], current[i], 0, 1e-11 * current[i]);
        }
    }

    private static double[] Log(double least, double most, int seed)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, Cases).Select(_ => least * Math.Pow(most / least, random.NextDouble()))];
    }

    private static double[] Even(double least, double most, int seed)
    {
        Random random = new(seed);
        return [.. Enumerable.Range(0, Cases).Select(_ => least + ((most - least) * random.NextDouble()))];
    }

    private static void Near(double expected, double actual, int ulps, double more = 0) => Assert.True(
        Math.Abs(expected - actual) <= more + (ulps * (Math.BitIncrement(Math.Abs(expected)) - Math.Abs(expected))), FormattableString.Invariant($"{expected:R} and {actual:R}"));
}
