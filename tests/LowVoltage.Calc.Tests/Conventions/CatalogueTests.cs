using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>Everything that the library carries, tables, series, rules, materials, with its sources, as text: a shipped value or a source never changes unnoticed.</summary>
/// <remarks>
/// A digest stands for all that a type carries, numbers and words: whether the numbers are right is tested against published tables in Validation, and the words stand in the source as they are said.
/// To renew after a change that is meant: <c>bash .ci/approve</c>, read the difference, commit it, and note it in the changelog under "Reference data".
/// </remarks>
public class CatalogueTests
{
    private const int Depth = 4;

    [Fact]
    public void WhatIsCarried_IsWhatWasReviewed()
    {
        StringBuilder all = new();
        foreach (Type type in typeof(Reference).Assembly.GetExportedTypes().Where(type => !WithFilesOfTheirOwn(type)).OrderBy(type => type.FullName, StringComparer.Ordinal))
        {
            PropertyInfo[] members = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Static).OrderBy(p => p.Name, StringComparer.Ordinal)];
            Write(all, type.FullName!["LowVoltage.Calc.".Length..], [.. members.Select(member => Of(member.GetValue(null), 1).Named(member.Name))]);
        }

        Write(all, "made", [.. Made().Select(made => Of(made, 1).Named(made.GetType().Name))]);
        ApprovedText.Check("catalogue.txt", all.ToString());
    }

    // The schemas of documents, and the mistakes of students.
    private static bool WithFilesOfTheirOwn(Type type) => type.Namespace == "LowVoltage.Calc.Documents" || type == typeof(Mistake);

    // A type with the digest of all its members.
    private static void Write(StringBuilder all, string type, CatalogueNode[] members)
    {
        if (members.Length > 0)
        {
            all.Append(type).Append(' ').Append(CatalogueNode.Digest(members)).Append('\n');
        }
    }

    // One of each kind of source, load and way back, made from plain numbers: their names, assumptions and sources are data too.
    private static IEnumerable<object> Made()
    {
        ElectricPotential twelve = ElectricPotential.FromVolts(12), ten = ElectricPotential.FromVolts(10), fourteen = ElectricPotential.FromVolts(14);
        ElectricCurrent five = ElectricCurrent.FromAmperes(5);
        ElectricResistance one = ElectricResistance.FromOhms(1), two = ElectricResistance.FromOhms(2);
        Source behind = Source.BehindResistance(twelve, one), lead = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600));
        return
        [
            Source.Ideal(twelve), Source.Ideal(ten, twelve, fourteen), behind, Source.BehindResistance(ten, twelve, fourteen, one, two),
            Source.CurrentLimited(twelve, five), Source.Alternator(fourteen, five), Source.InSeries(behind, lead), Source.InParallel(behind, behind),
            lead, Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100)), Battery.LithiumIronPhosphate(8, ElectricCharge.FromAmpereHours(50), five),
            Load.Resistance(two), Load.ConstantCurrent(five), Load.ConstantPower(Power.FromWatts(60)), Load.ConstantPower(Power.FromWatts(60), 0.9, ten), Load.Lamp(Power.FromWatts(21), twelve),
            Load.Motor(five, ElectricCurrent.FromAmperes(20), ElectricCurrent.FromAmperes(30), Duration.FromSeconds(0.2)),
            ReturnPath.Wire(Length.FromMeters(3)), ReturnPath.Chassis(one), ReturnPath.Shared(one, five),
        ];
    }

    private static CatalogueNode Of(object? value, int level) => value switch
    {
        null => new("none"),
        string text => new(text),
        double number => new(number.ToString("G12", CultureInfo.InvariantCulture)),
        Enum or bool or int => new(Convert.ToString(value, CultureInfo.InvariantCulture)!),
        IQuantity quantity => new(((double)quantity.Value).ToString("G12", CultureInfo.InvariantCulture) + " " + quantity.Unit),
        Reference source => new(source + " | " + source.Note),
        IEnumerable items => new("", [.. items.Cast<object>().Select(item => Of(item, level + 1))]),
        _ => new(Convert.ToString(value, CultureInfo.InvariantCulture)!, level < Depth ? [.. Properties(value, level)] : []),
    };

    // What is not there is left out: should it come, it shows.
    private static IEnumerable<CatalogueNode> Properties(object value, int level) =>
        from property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        where property.GetIndexParameters().Length == 0
        orderby property.Name
        let inner = property.GetValue(value)
        where inner is not null
        select Of(inner, level + 1).Named(property.Name);
}
