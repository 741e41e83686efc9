using System.Globalization;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <content>What the caller stated, and what was chosen.</content>
internal sealed partial class DesignExplanation
{
    private void Givens()
    {
        board.Given("circuit", asked.Name.Length > 0 ? asked.Name : "not named");
        board.Given("rules", design.Rules.Name);
        source = new SourceSymbols(board, asked.Source);
        LoadGivens();
        PathSteps.Givens(board, path);
        board.Given("way back", Words(design.Existing?.Return ?? asked.Return));
        if (asked.UpstreamOhms is null)
        {
            board.Given("supply lead from the source to the fuse", "not stated, counted as nothing");
        }

        PlaceGivens();
        DropLimit limit = asked.DropLimit ?? design.Rules.DropLimit;
        if (limit.Share > 0)
        {
            board.Given("allowed drop, of the nominal voltage", "p_max", limit.Share * 100, "%");
        }
        else
        {
            board.Given("allowed drop", limit + (asked.Intermittent ? ", intermittent load" : ""));
        }

        if (asked.FuseDistanceMeters is { } meters)
        {
            board.Given($"conductor between source and fuse, {(asked.SheathedToFuse ? "sheathed" : "not sheathed")}", "l_f", meters, "m");
        }

        board.Given("wire", design.Existing is not null && Several ? "as it is laid, the parts above" : design.Wire?.ToString() ?? $"none of the series fits; worked out below is {wire}");
        board.Given("fuse", design.Fuse?.ToString() ?? (fuse is null ? "none" : $"none fits; worked out below is the {fuse}, which comes nearest"));
    }

    private void LoadGivens()
    {
        board.Given("load", asked.Load.Name);
        load = new LoadSymbols(board);
        asked.Load.Describe(load);
        if (asked.Load.MinimumVolts is { } least)
        {
            board.Given("least voltage at which the load works", "U_min", least, "V");
        }
    }

    private void PlaceGivens()
    {
        ambient = board.Given("temperature of the air where the wire runs", "θ_a", design.At.AmbientCelsius, "°C");
        if (asked.AltitudeMeters > 0)
        {
            board.Given("altitude above sea level", "H", asked.AltitudeMeters, "m");
        }

        board.Given("loaded conductors together", design.At.LoadedConductors.ToString(CultureInfo.InvariantCulture));
        if (asked.BundleLoading < 1)
        {
            board.Given("share of the bundle's capacity in use", Accept.Short(100 * asked.BundleLoading) + " %");
        }

        if (asked.EngineSpace)
        {
            board.Given("place", "engine space");
        }

        board.Given("insulation", asked.Insulation.Name);
        continuous = board.Given("temperature that the insulation stands for good", "θ_c", asked.Insulation.ContinuousCelsius, "°C");
        if (asked.WallMillimeters is { } wall)
        {
            board.Given("wall of the insulation", Accept.Short(wall) + " mm");
        }
    }

    private static string Words(ReturnPath back) => back.Kind switch
    {
        ReturnKind.SameConductor => "a wire like the feed",
        ReturnKind.Chassis => "the chassis",
        ReturnKind.SharedResistance => "a resistance shared with other circuits",
        ReturnKind.SharedSegments => "wire shared with other circuits",
        _ => "wire of its own",
    };
}
