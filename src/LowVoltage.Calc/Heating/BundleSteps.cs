using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Heating;

/// <summary>Writes what stands for wires that lie together, all of them loaded: the cylinder, its emissivity, the resistance inside.</summary>
internal sealed class BundleSteps(SolutionBuilder board, WireBundle bundle, Symbol ambient, Symbol emits, string mark)
{
    private static readonly Formula Pi = new Symbol("π", Math.PI, "", "circumference over diameter");

    private readonly double wires = bundle.Wires;
    private readonly double outer = bundle.Wire.OuterDiameterMillimeters * 1e-3;
    private readonly double inner = bundle.Wire.Conductor.DiameterMillimeters * 1e-3;

    private bool Touches => bundle.Arrangement != BundleArrangement.Bundle;

    private string Named(string letter) => SymbolName.With(letter, mark);

    /// <summary>The cylinder and the emissivity of its surface; what they need stands before them.</summary>
    internal (Symbol Across, Symbol Emits) Surface()
    {
        Symbol over = Over();
        if (!Touches)
        {
            Symbol fill = Fill();
            return (
                board.Step(
                    "diameter of the bundle", Named("D_s"), over * Formula.SquareRoot(wires / fill), bundle.DiameterMeters, "m", null, $"{Accept.Text(bundle.Wires)} wires laid by hand."),
                emits);
        }

        Symbol around = board.Step(
            "tight string round the wires", Named("P_s"), (Pi + TouchingWires.StringExcess(bundle.Wires)) * over, Math.PI * bundle.DiameterMeters, "m", null,
            $"{(bundle.Wires == 2 ? "Two wires" : "Three wires")} that touch.");
        Symbol across = board.Step("diameter of a cylinder of that circumference", Named("D_s"), around / Pi, bundle.DiameterMeters, "m", null);
        Symbol share = board.Step(
            "share of a wire's surface that sees out", Named("k_s"), around / (wires * Pi * over), TouchingWires.OpenShare(bundle.Wires), "", BundleHeat.CrossedStringsReference);
        Symbol grooves = board.Step(
            "emissivity of the string", Named("ε_s"), emits / (emits + (share * (1 - emits))), TouchingWires.Emissivity(emits.Value, bundle.Wires), "", BundleHeat.CrossedStringsReference,
            "The grooves between the wires are darker than their surface.");
        return (across, grooves);
    }

    /// <summary>W: from the surface to the hottest conductor, per watt and metre of all the heat.</summary>
    internal Symbol Inside(Surroundings air, double innerResistance)
    {
        Wire wire = bundle.Wire;
        Symbol over = Over(), through = board.LookUp("diameter of the conductor", Named("d_w"), inner, "m", wire.Conductor.Reference);
        Symbol resistivity = board.LookUp(
            "thermal resistivity of the insulation", "ρ_T", wire.Insulation.ThermalResistivityKelvinMetersPerWatt, "K·m/W", wire.Insulation.ThermalReference);
        Symbol own = board.Step(
            "thermal resistance of a wire's insulation", Named("T_w"), resistivity * Formula.Logarithm(over / through) / (2 * Pi), HeatBalanceKernel.InsulationResistance(wire), "K·m/W",
            HeatBalance.InsulationReference);
        return Touches
            ? board.Step(
                "thermal resistance inside, for the heat of all wires", Named("W_s"), own / (wires * board.Find(Named("k_s"))!), innerResistance, "K·m/W", BundleHeat.CrossedStringsReference,
                "The heat leaves through the share that sees out.")
            : Packed(own, resistivity, over, through, air, innerResistance);
    }

    private Symbol Packed(Symbol own, Symbol resistivity, Symbol over, Symbol through, Surroundings air, double innerResistance)
    {
        double conductivity = AirKernel.ThermalConductivity(air.AmbientCelsius + AirKernel.ZeroCelsius, out _), whole = PackedWires.Conductivity(bundle.Wire, bundle.Fill, air, conductivity);
        Symbol still = board.LookUp("thermal conductivity of the air", "k_a", conductivity, "W/(m·K)", AirProperties.Reference, $"At {ambient.Name}."), fill = Fill(), beta = Beta(resistivity, over, through, still);
        Symbol radiates = board.Step(
            "radiation from wire to wire as a conductivity", Named("k_r"),
            4 * Formula.FromNumber(HeatBalanceKernel.StefanBoltzmann, "W/(m²·K⁴)") * Formula.Power(ambient + Formula.FromNumber(AirKernel.ZeroCelsius, "K"), 3) * over * emits / (2 - emits),
            PackedWires.Radiation(bundle.Wire, air), "W/(m·K)", null, "As in a packed bed.");
        Symbol packed = board.Step(
            "thermal conductivity of the packed wires", Named("k_p"), (still * (1 + (fill * beta)) / (1 - (fill * beta))) + radiates, whole, "W/(m·K)", BundleHeat.Reference);
        double third = TouchingWires.OpenShare(TouchingWires.Most);
        Symbol film = board.Step(
            "thermal resistance of the air round a wire", Named("T_a"), (Formula.Logarithm(1 / fill) - (1 - fill)) / (4 * Pi * still), PackedWires.Film(bundle.Fill, 1, conductivity), "K·m/W", null,
            "Its cell of air, heated by the wire inside and by those around.");
        Symbol centre = board.Step(
            "thermal resistance from the outer layer to the middle", Named("T_m"), wires * (1 - Formula.SquareRoot(fill / wires)) / (4 * Pi * packed),
            PackedWires.Centre(bundle.Fill, bundle.Wires, bundle.Wires, whole), "K·m/W", null, "For the heat of one wire, all others making the same.");
        Symbol share = board.LookUp("share of a wire's surface that sees out", Named("k_s"), third, "", BundleHeat.CrossedStringsReference, "As of three wires that touch, (π + 3)/(3·π).");
        return board.Step(
            "thermal resistance inside, for the heat of all wires", Named("W_s"), ((own / share) + film + centre) / wires, innerResistance, "K·m/W", BundleHeat.Reference);
    }

    private Symbol Beta(Symbol resistivity, Symbol over, Symbol through, Symbol still)
    {
        double across = PackedWires.AcrossWire(bundle.Wire), beta = PackedWires.Beta(across, still.Value);
        if (double.IsPositiveInfinity(across))
        {
            return board.LookUp("contrast of wire and air", Named("β_s"), beta, "", BundleHeat.Reference, "Bare wires: metal throughout.");
        }

        Formula metal = Formula.Square(through / over);
        Symbol wire = board.Step(
            "thermal conductivity of a wire across its axis", Named("k_w"), (1 + metal) / (1 - metal) / resistivity, across, "W/(m·K)", BundleHeat.Reference, "Its metal taken as a perfect conductor.");
        return board.Step("contrast of wire and air", Named("β_s"), (wire - still) / (wire + still), beta, "", BundleHeat.Reference);
    }

    private Symbol Over() => board.LookUp("diameter over the insulation of a wire", Named("D_w"), outer, "m", null);

    private Symbol Fill() => board.LookUp("section of the wires over that of the bundle", "k_fill", bundle.Fill, "", WireBundle.FillReference);
}
