using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Tests.Checks;

public class CheckKindTests
{
    [Fact]
    public void All_AreTheProperties_InTheOrderInWhichTheyAreAsked()
    {
        CheckKind[] properties = [.. typeof(CheckKind).GetProperties().Where(p => p.PropertyType == typeof(CheckKind)).Select(p => (CheckKind)p.GetValue(null)!)];
        Assert.Equal(properties.Length, CheckKind.All.Count);
        Assert.Equal(properties.ToHashSet(), CheckKind.All.ToHashSet());
        int[] orders = [.. CheckKind.All.Select(kind => ((Check)kind).Order)];
        Assert.Equal(orders.Order(), orders);
        Assert.Equal(orders.Length, orders.Distinct().Count());

        // The wire's come first: the mechanical minimum, whether there is any point, what is lost. What asks of having no fuse stands with the fuse's.
        Assert.Equal([CheckKind.MechanicalMinimum, CheckKind.PowerDelivery, CheckKind.VoltageDrop], CheckKind.All.Take(3));
        Assert.All(CheckKind.All, kind => Assert.Equal(((Check)kind).Order < Check.FirstOfFuse, ((Check)kind).Group == CheckGroup.Wire));
        Assert.All(CheckKind.All, kind => Assert.Equal(((Check)kind).Order >= Check.FirstOfSupply, ((Check)kind).Group == CheckGroup.Supply));
        Assert.Equal((CheckGroup.Fuse, CheckGroup.Fuse), (((Check)CheckKind.FuseCarriesLoad).Group, ((Check)CheckKind.OvercurrentProtection).Group));
        Assert.Equal(Check.FirstOfFuse, ((Check)CheckKind.FuseCarriesLoad).Order);
        Assert.Equal(CheckGroup.Wire, ((Check)CheckKind.ConductorTemperature).Group);
    }

    [Fact]
    public void Find_ByItsIdentifier()
    {
        Assert.All(CheckKind.All, kind => Assert.Same(kind, CheckKind.Find(kind.Id)));
        Assert.All(CheckKind.All, kind => Assert.Equal(kind.Name, kind.ToString()));
        Assert.Null(CheckKind.Find("voltagedrop"));
        Assert.Equal("id", Assert.Throws<ArgumentNullException>(() => CheckKind.Find(null!)).ParamName);
    }
}
