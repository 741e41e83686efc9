using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>The latest opening on a falling fault current, over many loops.</summary>
public class LatestClearingTests
{
    [Fact]
    public void Latest_RandomLoops_NeverBeyondTheLongestTimeAtTheLastCurrent()
    {
        Random random = new(1129);
        FuseRating[] fuses = [.. FuseSeries.RoadVehicleBlade.Ratings, .. FuseSeries.RoadVehicleHighCurrentBlade.Ratings, .. FuseSeries.IndustrialGg.Ratings.Where(r => r.Current.Amperes <= 200)];
        int opened = 0;
        for (int k = 0; k < 20_000; k++)
        {
            FuseRating fuse = fuses[random.Next(fuses.Length)];
            Conductor conductor = ConductorSeries.Iec60228Class5.Conductors[random.Next(4, ConductorSeries.Iec60228Class5.Conductors.Count - 2)];
            FaultPath path = FaultPath.Create(
                ElectricPotential.FromVolts(10 + (40 * random.NextDouble())),
                ElectricResistance.FromMilliohms(Math.Pow(10, 3 * random.NextDouble())),
                FaultSegment.Create(conductor, Length.FromMeters(Math.Pow(10, 2 * random.NextDouble())), Temperature.FromDegreesCelsius(70)));
            if (fuse.Curve is null || FaultClearing.Latest(path, fuse) is not { Outcome: FaultOutcome.Opens, State: { } state })
            {
                continue;
            }

            opened++;
            Assert.True(fuse.TryOperatingTime(state.Current, out _, out Duration longest), "the last current need not open it");
            Assert.True(state.Time.Seconds <= longest.Seconds * (1 + 1e-9), $"{k}: {fuse} behind {path}: {state.Time.Seconds} s at {state.Current.Amperes} A, whose longest time is {longest.Seconds} s");
        }

        Assert.True(opened > 5000, $"{opened} opened");
    }
}
