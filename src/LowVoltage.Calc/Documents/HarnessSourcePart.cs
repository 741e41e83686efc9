using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A source of a harness in a document.</summary>
internal static class HarnessSourcePart
{
    private static readonly Member<double> ShortCircuit = Member.Needed<double>("short_circuit_current_A", Ranges.Amperes, "Short-circuit current, A.");
    private static readonly Member<double> OpenCircuit = Member.Needed<double>("open_circuit_voltage_V", Ranges.Volts, "Open-circuit voltage, V.");
    private static readonly Member<double> BestVolts = Member.Needed<double>("voltage_at_maximum_power_V", Ranges.Volts, "Voltage at maximum power, V: 0.5 to 0.97 of the open-circuit voltage.");
    private static readonly Member<double> BestAmperes = Member.Needed<double>("current_at_maximum_power_A", Ranges.Amperes, "Current at maximum power, A: 0.5 to 0.99 of the short-circuit current.");

    private static readonly ObjectForm PanelForm = new(
        "solar_panel",
        "A solar panel by its data sheet.",
        at => SolarPanel.Create(Amperes(at, ShortCircuit), Volts(at, OpenCircuit), Volts(at, BestVolts), Amperes(at, BestAmperes)),
        [ShortCircuit, OpenCircuit, BestVolts, BestAmperes]);

    private static readonly Member<Source> Electric = Member.Optional<Source>("source", SourcePart.Form, "What it is electrically.");
    private static readonly Member<SolarPanel> Panel = Member.Optional<SolarPanel>("solar_panel", PanelForm, "The panel, where it is one.");

    internal static Member<string> Positive { get; } = Member.Needed<string>("positive", TextForm.Name, "The node at its positive terminal.");

    internal static Member<string> Negative { get; } = Member.Needed<string>("negative", TextForm.Name, "The node at its negative terminal.");

    internal static ObjectForm Form { get; } = new(
        "harness_source",
        "A source of a harness.",
        at => at.OrNull(Panel) is { } panel
            ? HarnessSource.Create(at.Get(HarnessBranchPart.Id), at.Get(Positive), at.Get(Negative), panel)
            : HarnessSource.Create(at.Get(HarnessBranchPart.Id), at.Get(Positive), at.Get(Negative), at.Get(Electric)),
        [HarnessBranchPart.Id, Positive, Negative, Electric, Panel],
        MemberRule.NotBoth(Electric, Panel),
        MemberRule.Without(Panel, Electric));

    internal static void Write(Utf8JsonWriter json, HarnessSource source)
    {
        json.WriteStartObject();
        json.Put(HarnessBranchPart.Id, source.Id);
        json.Put(Positive, source.Positive);
        json.Put(Negative, source.Negative);
        if (source.Panel is { } panel)
        {
            json.Put(Panel, panel, WritePanel);
        }
        else
        {
            json.Put(Electric, source.Source!, SourcePart.Write);
        }

        json.WriteEndObject();
    }

    private static void WritePanel(Utf8JsonWriter json, SolarPanel panel)
    {
        json.WriteStartObject();
        json.Put(ShortCircuit, panel.ShortAmperes);
        json.Put(OpenCircuit, panel.OpenVolts);
        json.Put(BestVolts, panel.BestVolts);
        json.Put(BestAmperes, panel.BestAmperes);
        json.WriteEndObject();
    }

    private static ElectricPotential Volts(Values at, Member<double> member) => ElectricPotential.FromVolts(at.Get(member));

    private static ElectricCurrent Amperes(Values at, Member<double> member) => ElectricCurrent.FromAmperes(at.Get(member));
}
