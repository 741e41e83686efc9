using System.Text.Json;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A joint in a document.</summary>
internal static class JointPart
{
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Any, "What it is: fuse and holder.");
    private static readonly Member<double> Ohms = Member.Needed<double>("resistance_ohm", Ranges.OhmsOrZero, "Its resistance, Ω; usually some thousandths.");

    internal static ObjectForm Form { get; } = new(
        "joint",
        "A crimp, connector, switch, relay contact, or fuse and holder.",
        at => Joint.Create(at.Get(Name), ElectricResistance.FromOhms(at.Get(Ohms))),
        [Name, Ohms]);

    internal static ListForm<Joint> List { get; } = new(Form);

    internal static void Write(Utf8JsonWriter json, Joint joint)
    {
        json.WriteStartObject();
        json.Put(Name, joint.Name);
        json.Put(Ohms, joint.Ohms);
        json.WriteEndObject();
    }
}
