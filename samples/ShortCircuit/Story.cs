using System.Globalization;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>The story of one short circuit, told in a few lines: what flows, how hot the wire gets, when the fuse ends it.</summary>
internal static class Story
{
    private static readonly double[] Milliseconds = [0, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

    internal static void Tell(Scene scene, TextWriter output)
    {
        FaultOpening soonest = FaultClearing.Soonest(scene.Path, scene.Fuse), latest = FaultClearing.Latest(scene.Path, scene.Fuse);
        output.WriteLine(Scene.Caution);
        output.WriteLine();
        output.WriteLine($"{scene.Wire}, {Text(scene.Length.Meters)} m in the loop, starting at {Text(scene.Initial.DegreesCelsius)} °C");
        output.WriteLine($"{Text(scene.Path.Voltage.Volts)} V behind {Text(scene.Path.FixedResistance.Milliohms)} mΩ, {scene.Fuse}");
        output.WriteLine($"prospective current {Text(scene.Path.ProspectiveCurrent.Amperes)} A");
        output.WriteLine();
        output.WriteLine("   time ms   current A   let-through A²s   conductor °C   if nothing opened");
        foreach (double milliseconds in Milliseconds)
        {
            FaultState state = FaultTransient.StateAfter(scene.Path, Duration.FromMilliseconds(milliseconds));
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{milliseconds,10:0}{state.Current.Amperes,12:0}{state.LetThrough.AmpereSquaredSeconds,18:0}{state.HottestTemperature.DegreesCelsius,15:0}   {(state.IsMelting ? $"molten since {state.Time.Milliseconds:0} ms" : "")}"));
            if (state.IsMelting)
            {
                break;
            }
        }

        output.WriteLine();
        output.WriteLine($"Soonest: {soonest.Reason}");
        output.WriteLine($"Latest:  {latest.Reason}");
        output.WriteLine($"Breaking capacity: {FuseRatingChecks.BreakingCapacity(scene.Fuse, scene.Path.ProspectiveCurrent).Reason}");
        output.WriteLine($"Over all currents: {scene.Protection.Reason}");
    }

    private static string Text(double value) => value.ToString("G4", CultureInfo.InvariantCulture);
}
