using LowVoltage.Calc.Circuits;

namespace CircuitSchedule;

/// <summary>The load of a row.</summary>
internal static class LoadCells
{
    private static readonly Dictionary<string, Func<CircuitRow, Load?>> Readers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["resistance"] = Resistance,
        ["current"] = Current,
        ["power"] = Power,
        ["lamp"] = Lamp,
        ["motor"] = Motor,
    };

    public static string Kinds => Words.List(Readers);

    public static Load? Read(CircuitRow row)
    {
        Load? load = row.Kind("load", Readers, Implied(row))?.Invoke(row);
        double? dutyPercent = row.OptionalNumber("duty_percent"), leastVolts = row.OptionalNumber("load_min_V"), microfarads = row.OptionalNumber("input_uF");
        if (load is not null && dutyPercent is { } percent)
        {
            load = row.Build(() => load.WithDutyCycle(DutyCycle.FromFraction(percent / 100)), ("fraction", "duty_percent"));
        }

        if (load is not null && leastVolts is { } volts)
        {
            load = row.Build(() => load.WithMinimumVoltage(ElectricPotential.FromVolts(volts)), ("minimumVoltage", "load_min_V"));
        }

        if (load is not null && microfarads is { } capacitance)
        {
            load = row.Build(() => load.WithInputCapacitor(ElectricCapacitance.FromMicrofarads(capacitance)), ("capacitance", "input_uF"));
        }

        return load;
    }

    // Where only one kind has what the row gives, the kind goes without saying.
    public static string? Implied(CircuitRow row) =>
        row.Gives("load_A") ? row.Gives("start_A") || row.Gives("locked_A") || row.Gives("start_s") ? "motor" : "current"
        : row.Gives("load_Ohm") ? "resistance"
        : row.Gives("load_W") && !row.Gives("load_rated_V") ? "power"
        : null;

    private static Load? Resistance(CircuitRow row)
    {
        if (row.Has("load_Ohm"))
        {
            double ohms = row.Number("load_Ohm");
            return row.Build(() => Load.Resistance(ElectricResistance.FromOhms(ohms)), ("resistance", "load_Ohm"));
        }

        double watts = row.Number("load_W"), volts = row.Number("load_rated_V");
        return row.Build(
            () => Load.Resistance(OhmsLaw.FromVoltageAndPower(ElectricPotential.FromVolts(volts), UnitsNet.Power.FromWatts(watts)).Resistance),
            ("power", "load_W"),
            ("voltage", "load_rated_V"));
    }

    private static Load? Current(CircuitRow row)
    {
        double amperes = row.Number("load_A");
        return row.Build(() => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes)), ("current", "load_A"));
    }

    private static Load? Power(CircuitRow row)
    {
        double watts = row.Number("load_W"), percent = row.OptionalNumber("efficiency_percent") ?? 100;
        return row.Build(
            () => Load.ConstantPower(UnitsNet.Power.FromWatts(watts), percent / 100), ("power", "load_W"), ("efficiency", "efficiency_percent"));
    }

    private static Load? Lamp(CircuitRow row)
    {
        double watts = row.Number("load_W"), volts = row.Number("load_rated_V");
        return row.Build<Load>(
            () => Load.Lamp(UnitsNet.Power.FromWatts(watts), ElectricPotential.FromVolts(volts)), ("rated", "load_W"), ("ratedVoltage", "load_rated_V"));
    }

    private static Load? Motor(CircuitRow row)
    {
        double runningAmperes = row.Number("load_A"), startAmperes = row.Number("start_A"), lockedAmperes = row.Number("locked_A"), seconds = row.Number("start_s");
        double? ratedVolts = row.OptionalNumber("load_rated_V");
        bool cutsOut = row.YesNo("thermal_cut_out");
        return row.Build(
            () =>
            {
                ElectricCurrent running = ElectricCurrent.FromAmperes(runningAmperes);
                ElectricCurrent peak = ElectricCurrent.FromAmperes(startAmperes);
                ElectricCurrent locked = ElectricCurrent.FromAmperes(lockedAmperes);
                Duration start = Duration.FromSeconds(seconds);
                Load motor = ratedVolts is { } volts
                    ? Load.Motor(running, peak, locked, start, ElectricPotential.FromVolts(volts))
                    : Load.Motor(running, peak, locked, start);
                return cutsOut ? motor.WithThermalCutOut() : motor;
            },
            ("running", "load_A"),
            ("peak", "start_A"),
            ("lockedRotor", "locked_A"),
            ("startDuration", "start_s"),
            ("ratedVoltage", "load_rated_V"));
    }
}
