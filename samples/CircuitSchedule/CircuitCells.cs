using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;

namespace CircuitSchedule;

/// <summary>A whole row: the requirements of one circuit. All that a row says becomes the library's here, in <see cref="SupplyCells"/> and in <see cref="LoadCells"/>.</summary>
internal static class CircuitCells
{
    private static readonly string[] Returns = ["return_m", "chassis_mOhm", "shared_mOhm"];

    /// <returns>The requirements; null when the row has a problem.</returns>
    public static CircuitRequirements? Read(CircuitRow row)
    {
        string name = row.RequiredName("circuit");
        Source? source = SupplyCells.Read(row);
        Load? load = LoadCells.Read(row);
        double feed = row.Number("feed_m"), ambient = row.Number("ambient_degC"), altitude = row.OptionalNumber("altitude_m") ?? 0;
        ReturnPath? back = Return(row, feed);
        Joint? joints = Joints(row);
        double? lead = row.OptionalNumber("supply_lead_mOhm"), distance = row.OptionalNumber("fuse_distance_m");
        double? fuseAmbient = row.OptionalNumber("fuse_degC");
        int? starts = row.Has("starts") ? row.Count("starts") : null;
        int? conductors = Conductors(row);
        double bundlePercent = row.OptionalNumber("bundle_loading_percent") ?? 100;
        InsulationMaterial? insulation = Insulation(row);
        DropLimit? limit = Limit(row);
        bool sheathed = row.YesNo("fuse_lead_sheathed"), engineSpace = row.YesNo("engine_space"), intermittent = row.YesNo("intermittent");
        if (row.Problems.Count > 0)
        {
            return null;
        }

        return row.Build(
            () => new CircuitRequirements
            {
                Name = name,
                Source = source!,
                Load = load!,
                Feed = Length.FromMeters(feed),
                Return = back!,
                Joints = joints is null ? [] : [joints],
                Upstream = lead is { } milliohms ? ElectricResistance.FromMilliohms(milliohms) : null,
                FuseDistance = distance is { } meters ? Length.FromMeters(meters) : null,
                SheathedToFuse = sheathed,
                FuseAmbient = fuseAmbient is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
                Starts = starts,
                Place = new Place
                {
                    Ambient = Temperature.FromDegreesCelsius(ambient),
                    LoadedConductors = conductors,
                    BundleLoading = bundlePercent / 100,
                    EngineSpace = engineSpace,
                    Altitude = Length.FromMeters(altitude),
                },
                Insulation = insulation!,
                DropLimit = limit,
                Intermittent = intermittent,
            },
            (nameof(CircuitRequirements.Feed), "feed_m"),
            (nameof(CircuitRequirements.Upstream), "supply_lead_mOhm"),
            (nameof(CircuitRequirements.FuseDistance), "fuse_distance_m"),
            (nameof(CircuitRequirements.FuseAmbient), "fuse_degC"),
            (nameof(CircuitRequirements.Starts), "starts"),
            (nameof(Place.Ambient), "ambient_degC"),
            (nameof(Place.LoadedConductors), "loaded_conductors"),
            (nameof(Place.BundleLoading), "bundle_loading_percent"),
            (nameof(Place.Altitude), "altitude_m"));
    }

    private static int? Conductors(CircuitRow row)
    {
        if (row.Has("loaded_conductors"))
        {
            return row.Count("loaded_conductors");
        }

        row.Assume("conductors that run together", "the circuit's own");
        return null;
    }

    private static ReturnPath? Return(CircuitRow row, double feed)
    {
        string[] given = [.. Returns.Where(row.Has)];
        if (given.Length > 1)
        {
            row.Report(given[1], $"expected one of {string.Join(", ", Returns)}; found {string.Join(" and ", given)}.");
            return null;
        }

        if (given.Length == 0)
        {
            row.Assume("return", "a wire as long as the feed");
            return row.Build(() => ReturnPath.Wire(Length.FromMeters(feed)), ("length", "feed_m"));
        }

        double number = row.Number(given[0]);
        if (given[0] == "return_m")
        {
            return row.Build(() => ReturnPath.Wire(Length.FromMeters(number)), ("length", "return_m"));
        }

        if (given[0] == "chassis_mOhm")
        {
            return row.Build(() => ReturnPath.Chassis(ElectricResistance.FromMilliohms(number)), ("resistance", "chassis_mOhm"));
        }

        double others = row.Number("shared_other_A");
        return row.Build(
            () => ReturnPath.Shared(ElectricResistance.FromMilliohms(number), ElectricCurrent.FromAmperes(others)),
            ("resistance", "shared_mOhm"),
            ("otherCurrent", "shared_other_A"));
    }

    private static Joint? Joints(CircuitRow row)
    {
        if (row.OptionalNumber("joints_mOhm") is { } milliohms)
        {
            return row.Build(() => Joint.Create("joints", ElectricResistance.FromMilliohms(milliohms)), ("resistance", "joints_mOhm"));
        }

        row.Assume("crimps, connectors, switches, fuse and holder", "no resistance");
        return null;
    }

    private static InsulationMaterial? Insulation(CircuitRow row)
    {
        string text = row.Text("insulation");
        if (text.Length == 0)
        {
            row.Assume("insulation", "PVC");
            return Words.Insulations["PVC"];
        }

        if (Words.Insulations.TryGetValue(text, out InsulationMaterial? known))
        {
            return known;
        }

        if (text.EndsWith("degC", StringComparison.Ordinal) && row.TryNumber(text[..^"degC".Length].TrimEnd(), out double rated))
        {
            string name = FormattableString.Invariant($"{rated} °C rated");
            double? shortCircuit = row.OptionalNumber("short_circuit_degC");
            return row.Build(
                () => shortCircuit is { } limit
                    ? InsulationMaterial.Rated(name, Temperature.FromDegreesCelsius(rated), Temperature.FromDegreesCelsius(limit))
                    : InsulationMaterial.Rated(name, Temperature.FromDegreesCelsius(rated)),
                ("continuous", "insulation"),
                ("shortCircuit", "short_circuit_degC"));
        }

        row.Report("insulation", $"expected a rating such as 105 degC, or one of {Words.List(Words.Insulations)}; {row.Found("insulation")}");
        return null;
    }

    private static DropLimit? Limit(CircuitRow row)
    {
        double? percent = row.OptionalNumber("drop_limit_percent"), volts = row.OptionalNumber("drop_limit_V");
        if (percent is not null && volts is not null)
        {
            row.Report("drop_limit_V", "expected one of drop_limit_percent and drop_limit_V; found both.");
        }

        return percent is { } share ? row.Build(() => DropLimit.Percent(share), ("percent", "drop_limit_percent"))
            : volts is { } drop ? row.Build(() => DropLimit.Volts(ElectricPotential.FromVolts(drop)), ("drop", "drop_limit_V"))
            : null;
    }
}
