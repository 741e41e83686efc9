using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class MotorStart
{
    public static void FuseThatHoldsTheStart()
    {
        #region fuse-that-holds-the-start
        // A motor of 6.5 A that takes 26 A for 0.4 s at start; stalled it draws 32 A.
        ElectricCurrent start = ElectricCurrent.FromAmperes(26), locked = ElectricCurrent.FromAmperes(32);
        Duration startTime = Duration.FromSeconds(0.4);

        foreach (double rating in new[] { 10.0, 15, 20, 25 })
        {
            FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(rating));
            Duration? least = fuse.Curve!.LeastTime(start);
            RatingCheck starts = PulseAgainstFuse.Check(fuse, start, PulseShape.Rectangle(start, startTime), pulses: 1000);
            string holds = least > startTime ? "holds one start" : "may open at a start";
            string opens = fuse.Curve.LongestTime(locked) is { } longest ? $"within {longest.Seconds:0} s" : "perhaps never";
            Console.WriteLine(
                $"{rating} A: {holds} (no sooner than {least?.Seconds:0.##} s); "
                + $"1000 starts: {starts.Verdict}; locked, opens {opens}");
        }
        #endregion
    }
}
