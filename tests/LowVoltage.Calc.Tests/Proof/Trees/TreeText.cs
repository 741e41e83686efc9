using System.Globalization;
using System.Text;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>A tree in words, for who looks at a disagreement.</summary>
internal static class TreeText
{
    public static string Of(TreeGiven given)
    {
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"{given.Name}: {given.Source} {given.Rules}");
        foreach (PartGiven part in given.Parts)
        {
            string before = part.Before < 0 ? "terminal" : given.Parts[part.Before].Id;
            string what = part.Fuse is { } fuse ? $"fuse {fuse.Code}, air {part.FuseAmbient}" : part.Wire is { } wire ? $"{wire.Parallel} x {wire.Meters} m {wire.Conductor.Code} {part.Insulation!.Code} {wire.Place}" : "chassis";
            text.AppendLine(CultureInfo.InvariantCulture, $"  {(part.IsReturn ? "back" : "feed")} {part.Id} after {before}: {what}; {part.Ohms * 1000:G4} mOhm");
        }

        foreach (TreeLoadGiven load in given.Loads)
        {
            string plus = load.Plus < 0 ? "terminal" : given.Parts[load.Plus].Id, minus = load.Minus < 0 ? "terminal" : given.Parts[load.Minus].Id;
            text.AppendLine(CultureInfo.InvariantCulture, $"  {load.Id} from {plus} to {minus}: {Law(load.Load)}; drop {load.DropPercent} %, starts {load.Starts}");
        }

        foreach (int[] set in given.Together)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  start together: {string.Join(", ", set)}");
        }

        return text.ToString();
    }

    private static string Law(LoadGiven load) => load.Parts.Length > 0
        ? $"[{string.Join(" + ", load.Parts.Select(Law))}]"
        : string.Create(CultureInfo.InvariantCulture, $"{load.Type} {load.A:G4} {load.B:G4} {load.C:G4} {load.D:G4} {load.E:G4} least {load.LeastVolts} V duty {load.Duty} {load.CapacitorFarads} F{(load.CutsOut ? " cuts out" : "")}");
}
