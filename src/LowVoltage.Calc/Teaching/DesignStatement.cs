using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>The sentences of a design problem; each world words them in its own way.</summary>
internal static class DesignStatement
{
    private const int Wordings = 3;

    /// <summary>Who needs what, and how far away.</summary>
    internal static string Task(ProblemDraft d, LoadDraw load, DrawnGiven watts, DrawnGiven volts, DrawnGiven distance) =>
        ProblemDraft.Upper(string.Format(CultureInfo.InvariantCulture, d.World.Site.Task, load.One, $"{watts} at {volts}", distance, d.Place));

    /// <summary>As <see cref="Task"/>, where the current comes back through metal.</summary>
    internal static string ChassisTask(ProblemDraft d, LoadDraw load, DrawnGiven watts, DrawnGiven volts, DrawnGiven wire, DrawnGiven back) =>
        $"{d.ChassisAtStart}, {load.One} rated {watts} at {volts} is to be fed through {wire} of wire; the {d.World.Site.Chassis.Noun} carries the current back and has a resistance of {back}.";

    internal static string Drop(ProblemDraft d, DrawnGiven share, DrawnGiven volts) => Wording(d.World) switch
    {
        0 => $"At most {share} of the voltage may be lost out and back (take the current at {volts} and copper at {d.At20}).",
        1 => $"The voltage drop, out and back, must stay within {share} (take the current at {volts} and copper at {d.At20}).",
        _ => $"Take the current at {volts} and copper at {d.At20}; up to {share} of the voltage may be lost out and back.",
    };

    internal static string Fuse(ProblemWorld world, DrawnGiven loading) => Wording(world) switch
    {
        0 => $"The load may be at most {loading} times the rating of the fuse; the wire must carry the full rating.",
        1 => $"The fuse may carry {loading} times its rating continuously; the wire must carry all of the rating.",
        _ => $"Load the fuse to at most {loading} times its rating, and choose a wire that carries the full rating.",
    };

    internal static string Place(DesignPlace place, DrawnGiven factor) => $"{place.Words} {factor} times the table current.";

    internal static string AtHand(ProblemWorld world) => $"Fuses available: {FuseProblems.RatingList()}. " + Wording(world) switch
    {
        0 => "Choose the smallest fuse and the smallest wire that will do.",
        1 => "Take the smallest fuse, and the smallest wire that goes with it.",
        _ => "Find the smallest fuse and wire that meet all this.",
    };

    /// <summary>What is asked beside the number.</summary>
    internal static string Defence(ProblemWorld world) => Wording(world) switch
    {
        0 => "Defend your choice, one sentence each: what rules out the next smaller size, why is the next larger one unnecessary, and what is wrong with the fuse ratings on either side of yours?",
        1 => "Then give your reasons, one sentence each: why not one size thinner, why not one size thicker, and why no other fuse?",
        _ => "Also explain, in a sentence each, why the next smaller size fails, why the next larger one is not needed, and why neither the next smaller nor the next larger fuse will do.",
    };

    private static int Wording(ProblemWorld world) => (int)world.Setting % Wordings;

}
