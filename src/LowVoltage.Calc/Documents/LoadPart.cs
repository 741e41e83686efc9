using System.Text.Json;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A load in a document: its law, and what any load may have besides.</summary>
internal static class LoadPart
{
    private const string Resistance = "resistance";
    private const string Current = "constant current";
    private const string Power = "constant power";
    private const string Lamp = "lamp";
    private const string Motor = "motor";
    private const string Measured = "measured points";
    private const string Together = "together";

    private static readonly NumberForm Share = new(1e-12, 1, "");

    private static readonly Member<double> Ohms = Member.Needed<double>("resistance_ohm", Ranges.Ohms, "Resistance while it runs, Ω.");
    private static readonly Member<double> Amperes = Member.Needed<double>("current_A", Ranges.Amperes, "Current at any voltage, A.");
    private static readonly Member<double> Watts = Member.Needed<double>("power_W", Ranges.Watts, "Power, W; of a converter what it gives, of a lamp at its rated voltage.");
    private static readonly Member<double> Efficiency = Member.Optional<double>("efficiency", Share, "Efficiency of the converter; left out: 1.");
    private static readonly Member<double> LampVolts = Member.Needed<double>("rated_V", Ranges.Volts, "Rated voltage, V.");
    private static readonly Member<double> ColdRatio = Member.Optional<double>("cold_resistance_ratio", new NumberForm(1, 25, ""), "Hot resistance over cold resistance; left out: 14.");
    private static readonly Member<double> Running = Member.Needed<double>("running_A", Ranges.Amperes, "Current when it runs, A.");
    private static readonly Member<double> Peak = Member.Needed<double>("peak_A", Ranges.Amperes, "Highest current while it starts, A: from the running to the locked-rotor current.");
    private static readonly Member<double> Locked = Member.Needed<double>("locked_rotor_A", Ranges.Amperes, "Current with its rotor locked, A: at least the running current.");
    private static readonly Member<double> Start = Member.Needed<double>("start_duration_s", Ranges.Seconds, "How long starting takes, s.");
    private static readonly Member<double> MotorVolts = Member.Optional<double>("rated_V", Ranges.Volts, "Voltage that peak and locked-rotor current belong to, V; left out: they hold at any voltage.");
    private static readonly Member<double[]> Voltages = Member.Needed<double[]>("voltages_V", new ListForm<double>(Ranges.Volts, MeasuredLoad.LeastPoints), "Voltages across the load, V, rising.");
    private static readonly Member<double[]> Currents = Member.Needed<double[]>("currents_A", new ListForm<double>(Ranges.Amperes, MeasuredLoad.LeastPoints), "Current at each, A, never falling.");
    private static readonly Member<Load[]> Loads = Member.Needed<Load[]>("loads", new ListForm<Load>(new LaterForm(() => Form!), 1), "The loads, all on together.");

    private static readonly Member<double> Minimum = Member.Optional<double>("minimum_V", Ranges.Volts, "The least voltage at which it works, V; left out: none.");
    private static readonly Member<double> Duty = Member.Optional<double>("duty_fraction", Share, "Share of the time that it is on, in short pulses; left out: 1.");
    private static readonly Member<double> DutyOn = Member.Optional<double>("duty_on_s", Ranges.Seconds, "Time on in each period, s.");
    private static readonly Member<double> DutyPeriod = Member.Optional<double>("duty_period_s", Ranges.Seconds, "Time from one switching on to the next, s.");
    private static readonly Member<bool> CutOut = Member.Optional<bool>("thermal_cut_out", FlagForm.Any, "Whether its motors protect themselves, or bear being stalled; left out: false.");
    private static readonly Member<double> Capacitor = Member.Optional<double>("input_capacitance_F", new NumberForm(1e-12, 1e6, "F"), "Capacitor at its input, F; left out: none.");

    internal static KindForm Form { get; } = new(
        "load",
        "What a circuit feeds.",
        (Resistance, Of("load_resistance", Resistance, "A resistance, such as a heater.", at => new ResistiveLoad(at.Get(Ohms)), Ohms)),
        (Current, Of("load_current", Current, "The same current at any voltage.", at => new ConstantCurrentLoad(at.Get(Amperes)), Amperes)),
        (Power, Of("load_power", Power, "The same power at any voltage, such as a converter.", at => new ConstantPowerLoad(at.Get(Watts), at.Or(Efficiency, 1)), Watts, Efficiency)),
        (Lamp, Of("load_lamp", Lamp, "An incandescent lamp.", at => new LampLoad(at.Get(Watts), at.Get(LampVolts), at.Or(ColdRatio, LampLoad.DefaultColdResistanceRatio)), Watts, LampVolts, ColdRatio)),
        (Motor, Of("load_motor", Motor, "A motor.", MakeMotor, Running, Peak, Locked, Start, MotorVolts)),
        (Measured, Of("load_measured", Measured, "A load known by measured points.", MakeMeasured, Voltages, Currents)),
        (Together, Of("load_together", Together, "Several loads at the end of one path.", at => Load.Together(at.Get(Loads)), Loads)));

    internal static void Write(Utf8JsonWriter json, Load load)
    {
        json.WriteStartObject();
        if (load is CombinedLoad { Parts: [var inner, CapacitorInput capacitor] })
        {
            if (inner is CombinedLoad { Parts: [_, CapacitorInput] })
            {
                // One capacitor behind another: the load with the first is one of a group of one.
                json.PutKind(Together);
                json.PutAll(Loads, [inner], Write);
            }
            else
            {
                WriteLaw(json, inner);
            }

            WriteCommon(json, load);
            json.Put(Capacitor, capacitor.Farads);
        }
        else
        {
            WriteLaw(json, load);
            WriteCommon(json, load);
        }

        json.WriteEndObject();
    }

    private static void WriteLaw(Utf8JsonWriter json, Load load)
    {
        switch (load)
        {
            case ResistiveLoad own:
                json.PutKind(Resistance);
                json.Put(Ohms, own.Ohms);
                break;
            case ConstantCurrentLoad own:
                json.PutKind(Current);
                json.Put(Amperes, own.Amperes);
                break;
            case ConstantPowerLoad own:
                json.PutKind(Power);
                json.Put(Watts, own.GivenWatts);
                json.PutUnless(Efficiency, own.Efficiency, 1);
                break;
            case LampLoad own:
                json.PutKind(Lamp);
                json.Put(Watts, own.RatedWatts);
                json.Put(LampVolts, own.RatedVolts);
                json.PutUnless(ColdRatio, own.ColdRatio, LampLoad.DefaultColdResistanceRatio);
                break;
            case MotorLoad own:
                json.PutKind(Motor);
                json.Put(Running, own.RunningAmperes);
                json.Put(Peak, own.PeakAmperes);
                json.Put(Locked, own.LockedAmperes);
                json.Put(Start, own.StartSeconds);
                json.PutIf(MotorVolts, own.RatedVolts);
                break;
            case MeasuredLoad own:
                json.PutKind(Measured);
                json.PutAll(Voltages, own.MeasuredVolts);
                json.PutAll(Currents, own.MeasuredAmperes);
                break;
            case CombinedLoad own:
                json.PutKind(Together);
                json.PutAll(Loads, own.Parts, Write);
                break;
            default:
                throw new NotSupportedException($"A load \"{load.Name}\" has no form in a document.");
        }
    }

    private static void WriteCommon(Utf8JsonWriter json, Load load)
    {
        json.PutIf(Minimum, load.OwnMinimumVolts);
        DutyCycle duty = load.DutyCycle;
        if (duty.OnSeconds > 0)
        {
            json.Put(DutyOn, duty.OnSeconds);
            json.Put(DutyPeriod, duty.PeriodSeconds);
        }
        else
        {
            json.PutUnless(Duty, duty.Share, 1);
        }

        json.PutIf(CutOut, load.OwnThermalCutOut);
    }

    private static ObjectForm Of(string name, string kind, string says, Func<Values, Load> make, params Member[] own) => new(
        name,
        says,
        at => WithCommon(at, make(at)),
        [KindForm.Of(kind), .. own, Minimum, Duty, DutyOn, DutyPeriod, CutOut, Capacitor],
        MemberRule.Needs(DutyOn, DutyPeriod),
        MemberRule.Needs(DutyPeriod, DutyOn),
        MemberRule.NotBoth(Duty, DutyOn));

    private static Load? WithCommon(Values at, Load load)
    {
        load = at.Maybe(Minimum) is { } volts ? load.WithMinimumVoltage(ElectricPotential.FromVolts(volts)) : load;
        load = at.Maybe(Duty) is { } share ? load.WithDutyCycle(DutyCycle.FromFraction(share)) : load;
        if (at.Maybe(DutyOn) is { } on)
        {
            double period = at.Get(DutyPeriod);
            if (on > period)
            {
                at.Reading.Judge(at.At(DutyOn), $"must be at most the period of {Quantities.Accept.Text(period)} s; it was {Quantities.Accept.Text(on)} s.");
                return null;
            }

            load = load.WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(on), Duration.FromSeconds(period)));
        }

        load = at.Or(CutOut, false) ? load.WithThermalCutOut() : load;
        return at.Maybe(Capacitor) is { } farads ? load.WithInputCapacitor(ElectricCapacitance.FromFarads(farads)) : load;
    }

    private static Load MakeMeasured(Values at) =>
        Load.Measured([.. at.Get(Voltages).Select(volts => ElectricPotential.FromVolts(volts))], [.. at.Get(Currents).Select(amperes => ElectricCurrent.FromAmperes(amperes))]);

    private static Load MakeMotor(Values at)
    {
        ElectricCurrent running = ElectricCurrent.FromAmperes(at.Get(Running)), peak = ElectricCurrent.FromAmperes(at.Get(Peak)), locked = ElectricCurrent.FromAmperes(at.Get(Locked));
        Duration start = Duration.FromSeconds(at.Get(Start));
        return at.Maybe(MotorVolts) is { } volts ? Load.Motor(running, peak, locked, start, ElectricPotential.FromVolts(volts)) : Load.Motor(running, peak, locked, start);
    }
}
