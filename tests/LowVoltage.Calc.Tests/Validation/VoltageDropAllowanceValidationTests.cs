using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Every voltage-drop allowance against its separate transcription.</summary>
public class VoltageDropAllowanceValidationTests
{
    private static readonly Dictionary<string, VoltageDropAllowance> Members = new(StringComparer.Ordinal)
    {
        ["Continuous14"] = FaaVoltageDrop.Continuous14,
        ["Intermittent14"] = FaaVoltageDrop.Intermittent14,
        ["Continuous28"] = FaaVoltageDrop.Continuous28,
        ["Intermittent28"] = FaaVoltageDrop.Intermittent28,
        ["MainPower"] = FaaVoltageDrop.MainPower,
        ["AbycCritical"] = SmallCraftVoltageDrop.AbycCritical,
        ["AbycNonCritical"] = SmallCraftVoltageDrop.AbycNonCritical,
        ["IsoVital"] = SmallCraftVoltageDrop.IsoVital,
        ["IsoOther"] = SmallCraftVoltageDrop.IsoOther,
        ["NecBranch"] = BuildingVoltageDrop.NecBranch,
        ["NecFeederAndBranch"] = BuildingVoltageDrop.NecFeederAndBranch,
        ["IecPublicLighting"] = BuildingVoltageDrop.IecPublicLighting,
        ["IecPublicOther"] = BuildingVoltageDrop.IecPublicOther,
        ["IecPrivateLighting"] = BuildingVoltageDrop.IecPrivateLighting,
        ["IecPrivateOther"] = BuildingVoltageDrop.IecPrivateOther,
    };

    [Fact]
    public void Allowances_EveryRow_IsAsPrinted()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-voltage-drop.csv").Rows;
        Assert.Equal(Members.Count, rows.Count);
        Assert.Equal(Members.Count, FaaVoltageDrop.All.Count + SmallCraftVoltageDrop.All.Count + BuildingVoltageDrop.All.Count);
        foreach (PublishedTable.Row row in rows)
        {
            VoltageDropAllowance allowance = Members[row.Text("member")];
            if (row.Has("nominal_v"))
            {
                Assert.Equal(row.Number("value"), allowance.Drop!.Value.Volts);
                Assert.Equal(row.Number("nominal_v"), allowance.NominalVoltage!.Value.Volts);
                Assert.Null(allowance.Share);
            }
            else
            {
                Assert.Equal(row.Number("value"), allowance.Share!.Value.Percent);
                Assert.Null(allowance.Drop);
                Assert.Null(allowance.NominalVoltage);
            }
        }
    }

    [Fact]
    public void RoadVehicleAllowances_EveryRow_IsTheSmallerOfTheCopies()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("ampacity-road-vehicle-drop.csv").Rows;
        Assert.Equal(18, rows.Count);
        Assert.Equal(18, RoadVehicleVoltageDrop.All.Count);
        foreach (PublishedTable.Row row in rows)
        {
            RoadVehicleCircuit circuit = Enum.Parse<RoadVehicleCircuit>(row.Text("circuit"));
            VoltageDropAllowance allowance = RoadVehicleVoltageDrop.Allowance(circuit, V(row.Number("nominal_v")));
            double expected = row.Has("remembered_v") ? Math.Min(row.Number("read_v"), row.Number("remembered_v")) : row.Number("read_v");
            Assert.Equal(expected, allowance.Drop!.Value.Volts);
            Assert.Equal(expected, allowance.Limit(V(row.Number("nominal_v"))).Volts);
            Assert.Equal(AllowancePath.PlusLineOnly, allowance.Path);
            Assert.Equal(AllowanceStatus.Guidance, allowance.Status);
        }
    }
}
