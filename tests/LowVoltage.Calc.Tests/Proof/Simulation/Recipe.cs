using System.Globalization;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A case as C# that can be pasted into a test, with the short helpers of the design tests: A, V, M, W, C, MilliOhm.</summary>
internal static class Recipe
{
    public static string Of(CaseGiven c)
    {
        List<string> parts = [$"Source = {Source(c.Source)}", $"Load = {Load(c.Load)}", $"Feed = M({N(c.Feed)})", $"Return = {Back(c.Back)}"];
        parts.Add($"Place = {Place(c.Place)}");
        parts.Add($"Insulation = {c.Insulation.Code}");
        Add(parts, c.JointOhms > 0, $"Joints = [Joint.Create(\"joints\", MilliOhm({N(c.JointOhms * 1000)}))]");
        Add(parts, c.UpstreamOhms is not null, $"Upstream = MilliOhm({N((c.UpstreamOhms ?? 0) * 1000)})");
        Add(parts, c.Mains.Length > 0, $"UpstreamProtection = [{string.Join(", ", c.Mains.Select(MainFuse))}]");
        Add(parts, c.FuseMeters is not null, $"FuseDistance = M({N(c.FuseMeters ?? 0)})");
        Add(parts, c.FuseAmbient is not null, $"FuseAmbient = C({N(c.FuseAmbient ?? 0)})");
        Add(parts, c.Starts is not null, $"Starts = {c.Starts}");
        Add(parts, c.Sheathed, "SheathedToFuse = true");
        Add(parts, c.WallMillimeters is not null, $"Wall = Length.FromMillimeters({N(c.WallMillimeters ?? 0)})");
        Add(parts, c.Intermittent, "Intermittent = true");
        Add(parts, c.DropPercent is not null, $"DropLimit = DropLimit.Percent({N(c.DropPercent ?? 0)})");
        Add(parts, c.DropVolts is not null, $"DropLimit = DropLimit.Volts(V({N(c.DropVolts ?? 0)}))");
        string requirements = $"CircuitRequirements r = new() {{ {string.Join(", ", parts)} }};\n";
        string rules = Rules(c.Rules);
        return !c.IsVerification
            ? requirements + $"CircuitDesigner.Design(r, {rules})"
            : requirements + $"CircuitDesigner.Verify(r, {(c.Wire is { } wire ? $"/* {wire} */" : $"CircuitPath.Create([{string.Join(", ", c.Laid.Select(Segment))}], r.Return)")}, {c.Fitted?.Code ?? "null"}, {rules})";
    }

    private static void Add(List<string> parts, bool needed, string text)
    {
        if (needed)
        {
            parts.Add(text);
        }
    }

    private static string Rules(RulesGiven r)
    {
        string preset = r.Preset switch { 0 => "DesignRules.RoadVehicle", 1 => "DesignRules.SmallCraft", 2 => "DesignRules.LightAircraft", _ => "DesignRules.Bench" };
        RulesGiven plain = new(r.Preset);
        List<string> parts = [];
        Add(parts, r.Basis != plain.Basis, $"Ampacity = {r.Basis}");
        Add(parts, r.Fuses != plain.Fuses, $"Fuses = {r.Fuses}");
        Add(parts, r.Loading != plain.Loading, $"Loading = {N(r.Loading)}");
        Add(parts, r.Share != plain.Share, $"ShareOfAmpacity = {N(r.Share)}");
        Add(parts, r.Allowance != plain.Allowance, r.Allowance is { } a ? $"Overload = {N(a.Sustained)} K, {N(a.Opened)} K" : "Overload = null");
        Add(parts, r.FaultSeconds != plain.FaultSeconds, $"FaultTime = {N(r.FaultSeconds)} s");
        return parts.Count == 0 ? preset : $"new DesignRules({preset}) {{ {string.Join(", ", parts)} }}";
    }

    private static string Source(SourceGiven s) => s.Type switch
    {
        SourceType.LeadAcid => $"Battery.LeadAcid(A({N(s.A)}), blocksInSeries: {N(s.B)}, stringsInParallel: {N(s.C)})",
        SourceType.Lithium => $"Battery.LithiumIronPhosphate({N(s.A)}, ElectricCharge.FromAmpereHours({N(s.B)}){(double.IsNaN(s.C) ? "" : $", A({N(s.C)})")})",
        SourceType.Range => $"Source.BehindResistance(V({N(s.A)}), V({N(s.B)}), V({N(s.C)}), MilliOhm({N(s.D * 1000)}), MilliOhm({N(s.E * 1000)}))",
        SourceType.Limited => $"Source.CurrentLimited(V({N(s.A)}), A({N(s.B)}))",
        SourceType.Alternator => $"Source.Alternator(V({N(s.A)}), A({N(s.B)}))",
        SourceType.Series => $"Source.InSeries({string.Join(", ", s.Parts.Select(Source))})",
        _ => $"Source.InParallel({string.Join(", ", s.Parts.Select(Source))})",
    };

    private static string Load(LoadGiven l)
    {
        string text = l.Type switch
        {
            LoadType.Resistance => $"Load.Resistance(MilliOhm({N(l.A * 1000)}))",
            LoadType.Current => $"Load.ConstantCurrent(A({N(l.A)}))",
            LoadType.Power => $"Load.ConstantPower(W({N(l.A)}), {N(l.B)})",
            LoadType.Lamp => $"Load.Lamp(W({N(l.A)}), V({N(l.B)}), {N(l.C)})",
            LoadType.Together => $"Load.Together({string.Join(", ", l.Parts.Select(Load))})",
            _ => $"Load.Motor(A({N(l.A)}), A({N(l.B)}), A({N(l.C)}), Duration.FromSeconds({N(l.D)}){(double.IsNaN(l.E) ? "" : $", V({N(l.E)})")})",
        };
        text += l.CutsOut ? ".WithThermalCutOut()" : "";
        text += l.Duty is { } duty ? $".WithDutyCycle(DutyCycle.FromFraction({N(duty)}))" : "";
        text += l.LeastVolts is { } volts ? $".WithMinimumVoltage(V({N(volts)}))" : "";
        return text + (l.CapacitorFarads is { } farads ? $".WithInputCapacitor(ElectricCapacitance.FromFarads({N(farads)}))" : "");
    }

    private static string MainFuse(MainGiven m) =>
        $"Main({m.Fuse.Code})" + (m.Before is { } ohms ? $".WithUpstream(MilliOhm({N(ohms * 1000)}))" : "")
        + (m.Feed.Length > 0 ? $".WithLead(CircuitPath.Create([{string.Join(", ", m.Feed.Select(Segment))}], {Back(m.Back)}))" : "")
        + $".WithLetThrough({m.LetThrough}, {m.Withstood}).WithLeastMelting({m.Melting}).WithDistance({m.Meters}, {m.Sheathed}).WithAmbient({m.Ambient})";

    private static string Back(BackGiven b) => b.Type switch
    {
        BackType.Wire => $"ReturnPath.Wire(M({N(b.Meters)}))",
        BackType.Segments => $"ReturnPath.Wire({string.Join(", ", b.Stretches.Select(Segment))})",
        BackType.Chassis => $"ReturnPath.Chassis(MilliOhm({N(b.Ohms * 1000)}))",
        BackType.SharedOhms => $"ReturnPath.Shared(MilliOhm({N(b.Ohms * 1000)}), A({N(b.Others)}))",
        _ => $"ReturnPath.Shared([{string.Join(", ", b.Stretches.Select(Segment))}], A({N(b.Others)}))",
    };

    private static string Segment(StretchGiven s) =>
        $"Segment.Create({s.Conductor.Code}, M({N(s.Meters)}){(s.Parallel > 1 ? $", {s.Parallel}" : "")})" + (s.Celsius is { } celsius ? $".WithTemperature(ConductorTemperature.At(C({N(celsius)})))" : "")
        + (s.Place is { } own ? $".WithPlace({Place(own)})" : "");

    private static string Place(PlaceGiven p)
    {
        List<string> parts = [$"Ambient = C({N(p.Ambient)})"];
        Add(parts, p.Loaded is not null, $"LoadedConductors = {p.Loaded}");
        Add(parts, p.Loading < 1, $"BundleLoading = {N(p.Loading)}");
        Add(parts, p.Altitude > 0, $"Altitude = M({N(p.Altitude)})");
        Add(parts, p.EngineSpace, "EngineSpace = true");
        return $"new Place {{ {string.Join(", ", parts)} }}";
    }

    private static string N(double value) => Math.Abs(value) > 1e15 ? value.ToString("R", CultureInfo.InvariantCulture) : ((double)(decimal)value).ToString("G6", CultureInfo.InvariantCulture);
}
