using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>The sentences of a design problem; each world words them in its own way.</summary>
internal static class DesignStatement
{
    private const int Wordings = 3;

    /// <summary>Who needs what, and how far away.</summary>
    internal static string Task(ProblemWorld world, LoadDraw load, DrawnGiven watts, DrawnGiven volts, DrawnGiven distance) =>
        Upper(string.Format(CultureInfo.InvariantCulture, world.Site.Task, load.One, $"{watts} at {volts}", distance));

    /// <summary>As <see cref="Task"/>, where the current comes back through metal.</summary>
    internal static string ChassisTask(ProblemWorld world, LoadDraw load, DrawnGiven watts, DrawnGiven volts, DrawnGiven wire, DrawnGiven back) =>
        $"{world.ChassisAtStart}, {load.One} of {watts} at {volts} is to be fed through {wire} of wire; the {world.Site.Chassis.Noun} is the way back and has {back}.";

    internal static string Drop(ProblemWorld world, DrawnGiven share, DrawnGiven volts) => Wording(world) switch
    {
        0 => $"At most {share} of the voltage may be lost out and back (current at {volts}, copper at 20 °C).",
        1 => $"The drop, out and back, must keep within {share} (current at {volts}, copper at 20 °C).",
        _ => $"Take the current at {volts} and copper at 20 °C; {share} of the voltage may be lost out and back.",
    };

    internal static string Fuse(ProblemWorld world, DrawnGiven loading) => Wording(world) switch
    {
        0 => $"The load may be at most {loading} of the fuse's rating; the wire must carry the whole rating.",
        1 => $"The fuse may carry {loading} of its rating continuously; the wire must carry all of it.",
        _ => $"Load the fuse with at most {loading} of its rating, and choose a wire that carries the whole rating.",
    };

    internal static string Place(DesignPlace place, DrawnGiven factor) => $"{place.Words} {factor} of the table's current.";

    internal static string AtHand(ProblemWorld world) => $"Fuses at hand: {FuseProblems.RatingList()}. " + Wording(world) switch
    {
        0 => "Choose the smallest fuse and wire that will do.",
        1 => "Take the smallest fuse, and the smallest wire that goes with it.",
        _ => "Find the smallest fuse and wire that meet all this.",
    };

    /// <summary>What is asked beside the number.</summary>
    internal static string Defence(ProblemWorld world) => Wording(world) switch
    {
        0 => "Defend your choice in a sentence each: what stops the next smaller size, why is the next larger one needless, and what is wrong with the fuses beside yours?",
        1 => "Then give your reasons, one sentence each: why not a size thinner, why not a size thicker, why no other fuse?",
        _ => "Say also, in a sentence each, why the next smaller size fails, why the next larger one is not needed, and why neither the fuse below nor the fuse above will do.",
    };

    private static int Wording(ProblemWorld world) => (int)world.Setting % Wordings;

    private static string Upper(string words) => char.ToUpperInvariant(words[0]) + words.Substring(1);
}
