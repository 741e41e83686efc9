using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class MotorStart
{
    public static void FuseThatHoldsTheStart()
    {
        #region fuse-that-holds-the-start
        // 6.5 A running; 26 A for 0.4 s at start. 32 A if it cannot turn.
        ElectricCurrent running = ElectricCurrent.FromAmperes(6.5);
        ElectricCurrent start = ElectricCurrent.FromAmperes(26);
        Duration startTime = Duration.FromSeconds(0.4);

        foreach (double rating in new[] { 7.5, 10, 15, 20 })
        {
            FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(rating));
            bool known = fuse.TryOperatingTime(start, out Duration least, out _);
            string verdict = !known ? "nothing stated" : least > startTime ? "holds" : "may open";
            Console.WriteLine($"{fuse.Current.Amperes,4} A: may open after {least.Seconds:0.###} s at {start.Amperes / rating:0.00} times its rating: {verdict}");
        }

        RatingCheck thousandStarts = PulseAgainstFuse.Check(
            FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(20)), start, PulseShape.Rectangle(start, startTime), pulses: 1000);
        Console.WriteLine($"20 A, 1000 starts: {thousandStarts.Verdict}; {thousandStarts.Reason}");
        Console.WriteLine($"locked, the 20 A fuse opens within {FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(20)).Curve!.LongestTime(ElectricCurrent.FromAmperes(32))?.Seconds:0} s");
        #endregion
        _ = running;
    }
}
