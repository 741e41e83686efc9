using FsCheck.Xunit;
using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Bulk;

/// <summary>Laws that hold whatever the numbers: inverse pairs, place in the span, and no allocation.</summary>
public class BulkProperties
{
    [Property]
    public bool AdiabaticForms_AreInversesOfOneAnother(int seed)
    {
        Random random = new(seed);
        double[] area = [Log(random, 0.1, 500)], start = [-100 + (250 * random.NextDouble())], seconds = [Log(random, 1e-3, 5)];
        double[] amperes = new double[1], time = new double[1], section = new double[1], joules = new double[1], final = new double[1];
        ConductorMaterial metal = random.Next(2) == 0 ? ConductorMaterial.Copper : ConductorMaterial.Aluminium;
        BulkAdiabaticHeating.GreatestCurrent(metal, 160, area, seconds, start, amperes);
        BulkAdiabaticHeating.TimeToReach(metal, 160, area, amperes, start, time);
        BulkAdiabaticHeating.LeastArea(metal, 160, amperes, seconds, start, section);
        BulkAdiabaticHeating.WithstandJouleIntegral(metal, 160, area, start, joules);
        BulkAdiabaticHeating.FinalTemperature(metal, area, amperes, seconds, start, final);
        return Near(time[0], seconds[0]) && Near(section[0], area[0]) && Near(amperes[0] * amperes[0] * seconds[0], joules[0])
            && Math.Abs(final[0] - 160) < 1e-10;
    }

    [Property]
    public bool LoadVoltage_SatisfiesItsCircuit(int seed)
    {
        Random random = new(seed);
        double v = Log(random, 1, 60), r = Log(random, 1e-3, 5), x = Log(random, 0.01, 100);
        double[] u = new double[3];
        BulkLoadVoltage.ConstantCurrent([v], [r], [x], u.AsSpan(0, 1));
        BulkLoadVoltage.Resistance([v], [r], [x], u.AsSpan(1, 1));
        BulkLoadVoltage.ConstantPower([v], [r], [x], u.AsSpan(2, 1));
        bool current = u[0] == 0 ? r * x >= v : Math.Abs(v - u[0] - (r * x)) <= 1e-13 * v;
        bool resistance = Math.Abs(v - u[1] - (r * u[1] / x)) <= 1e-13 * v;
        bool power = u[2] == 0 ? v * v < 4 * r * x * (1 + 1e-14) : u[2] >= v / 2 && Math.Abs((u[2] * (v - u[2])) - (r * x)) <= 1e-13 * v * v;
        return current && resistance && power;
    }

    [Property]
    public bool LeastArea_DropsWhatIsAllowed(int seed)
    {
        Random random = new(seed);
        double celsius = -100 + (300 * random.NextDouble()), meters = Log(random, 0.1, 1000), amperes = Log(random, 0.01, 1000), allowed = Log(random, 0.01, 5);
        double[] area = new double[1], perMeter = new double[1], volts = new double[1];
        BulkVoltageDrop.LeastArea(ConductorMaterial.Copper, [celsius], [meters], [amperes], [allowed], area);
        BulkResistance.PerMeter(ConductorMaterial.Copper, [ConductorMaterial.Copper.Resistivity.OhmMeters * 1e6 / area[0]], [celsius], perMeter);
        BulkVoltageDrop.Along(perMeter, [meters], [amperes], volts);
        return Near(volts[0], allowed);
    }

    [Property]
    public bool Place_DoesNotMatter(int seed, byte length)
    {
        // The same case at every place of a span of any length: one answer, to the last bit.
        Random random = new(seed);
        foreach (BulkCase bulk in BulkCase.All)
        {
            double[][] one = bulk.Draw(random, 1);
            double[] single = new double[1], many = new double[length];
            int none = bulk.Run(one, single);
            if (bulk.Run([.. one.Select(value => Enumerable.Repeat(value[0], length).ToArray())], many) != none * length || many.Any(value => !value.Equals(single[0])))
            {
                return false;
            }
        }

        return true;
    }

    [Fact]
    public void Bulk_AllocatesNothing()
    {
        double[][] inputs = new double[5][];
        for (int i = 0; i < 5; i++)
        {
            inputs[i] = [.. Enumerable.Range(0, 70).Select(n => 1.0 + (n * 0.01))];
        }

        double[] results = new double[70];
        ConductorMaterial copper = ConductorMaterial.Copper;
        int[] counts = [0, 3, 70];
        long least = long.MaxValue;
        for (int round = 0; round < 5; round++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            foreach (int count in counts)
            {
                ReadOnlySpan<double> a = inputs[0].AsSpan(0, count), b = inputs[1].AsSpan(0, count), c = inputs[2].AsSpan(0, count), d = inputs[3].AsSpan(0, count), e = inputs[4].AsSpan(0, count);
                Span<double> r = results.AsSpan(0, count);
                BulkResistance.PerMeter(copper, a, b, r);
                BulkResistance.OutAndBack(a, b, c, d, r);
                BulkVoltageDrop.Along(a, b, c, r);
                BulkVoltageDrop.OutAndBack(a, b, c, d, e, r);
                BulkVoltageDrop.LeastArea(copper, a, b, c, d, r);
                BulkLoadVoltage.ConstantCurrent(a, b, c, r);
                BulkLoadVoltage.Resistance(a, b, c, r);
                BulkLoadVoltage.ConstantPower(a, b, c, r);
                BulkConductorTemperature.AtCurrent(25, 75, a, b, r);
                BulkProspectiveCurrent.Least(a, b, c, r);
                BulkProspectiveCurrent.Greatest(a, b, c, r);
                BulkAdiabaticHeating.FinalTemperature(copper, a, b, c, d, r);
                BulkAdiabaticHeating.TimeToReach(copper, 160, a, b, c, r);
                BulkAdiabaticHeating.WithstandJouleIntegral(copper, 160, a, b, r);
                BulkAdiabaticHeating.LeastArea(copper, 160, a, b, c, r);
                BulkAdiabaticHeating.GreatestCurrent(copper, 160, a, b, c, r);
            }

            // The first round may pay for the compiler.
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        Assert.Equal(0, least);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 1e-13 * Math.Abs(b);

    private static double Log(Random random, double from, double to) => from * Math.Pow(to / from, random.NextDouble());
}
