using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Heating;

/// <summary>Writes how the current that a heat balance allows comes about.</summary>
internal static class HeatBalanceSteps
{
    /// <summary>The current that holds a conductor temperature.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="kernel">The balance, as it was used.</param>
    /// <param name="bundle">The wires, all loaded: the balance is that of all of them.</param>
    /// <param name="air">What they give their heat to.</param>
    /// <param name="ambient">Temperature of the air.</param>
    /// <param name="limit">The conductor temperature.</param>
    /// <param name="hot">Resistance per metre of one conductor at it.</param>
    /// <param name="mark">What tells the conductor from others of the solution.</param>
    /// <param name="name">The letter of the result.</param>
    internal static Symbol Write(SolutionBuilder board, in HeatBalanceKernel kernel, WireBundle bundle, Surroundings air, Symbol ambient, Symbol limit, Symbol hot, string mark, string name)
    {
        string named(string letter) => SymbolName.With(letter, mark);
        int loaded = bundle.Loaded;
        string what = loaded switch { 1 => "wire", 2 => "pair", 3 => "three wires", _ => "bundle" };
        double celsius = kernel.SurfaceFor(limit.Value), rise = celsius - ambient.Value;
        (double convection, double radiation, double rayleigh) = kernel.Paths(celsius);
        double film = ambient.Value + AirKernel.ZeroCelsius + (0.5 * rise), conductivity = AirKernel.ThermalConductivity(film, out _);
        double prandtl = AirKernel.SpecificHeat(film, out _) * AirKernel.DynamicViscosity(film, out _) / conductivity;
        Symbol emissivity() => board.LookUp("emissivity of the surface", "ε", air.Emissivity, "", null);
        Symbol across;
        Symbol? inside = null, radiates = null;
        if (loaded == 1)
        {
            across = board.LookUp("diameter of the wire", named("D_s"), kernel.Diameter, "m", null, "Over the insulation.");
        }
        else
        {
            BundleSteps steps = new(board, bundle, ambient, emissivity(), mark);
            (across, radiates) = steps.Surface();
            inside = steps.Inside(air, kernel.InnerResistance);
        }

        Symbol surface = board.LookUp(
            $"temperature of the surface of the {what}", named("θ_s"), celsius, "°C", HeatBalance.InsulationReference,
            $"By iteration: the heat that leaves, times {inside?.Name ?? Accept.Short(kernel.InnerResistance) + " K·m/W inside the wire"}, brings the conductor to {limit.Name}.");
        Symbol h = board.LookUp(
            "heat that the air carries off per area and kelvin", named("h"), convection / (Math.PI * kernel.Diameter * rise), "W/(m²·K)", NaturalConvection.ChurchillChuReference,
            $"h = (k/D)·[0.60 + 0.387·Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27)]² with Ra = {Accept.Short(rayleigh)}, Pr = {Accept.Short(prandtl)} and k = {Accept.Short(conductivity)} W/(m·K), air at {Accept.Short(film - AirKernel.ZeroCelsius)} °C.");
        radiates ??= emissivity();
        Formula zero = Formula.FromNumber(AirKernel.ZeroCelsius, "K"), around = new Symbol("π", Math.PI, "", "circumference over diameter") * across;
        Formula fourth(Symbol theta) => Formula.Power(theta + zero, 4);
        Symbol q = board.Step(
            $"heat that leaves a metre of the {what}",
            named("q"),
            around * ((h * (surface - ambient)) + (radiates * Formula.FromNumber(HeatBalanceKernel.StefanBoltzmann, "W/(m²·K⁴)") * (fourth(surface) - fourth(ambient)))),
            convection + radiation,
            "W/m",
            NaturalConvection.ChurchillChuReference,
            "By the air and by radiation to walls as warm as the air.");
        Formula resistance = loaded == 1 ? hot : (double)loaded * hot;
        Symbol carried = board.Step(
            "current at which as much heat is made", named("I_h"), Formula.SquareRoot(q / resistance), kernel.AmperesFor(limit.Value), "A", null, loaded == 1 ? "" : "Each of the wires at the same current.");
        return board.Step(
            "current that the heat balance allows", name, Formula.FromNumber(1 - HeatBalance.Margin, "") * carried, (1 - HeatBalance.Margin) * carried.Value, "A", HeatBalance.References[0], "Lowered by the model's margin of 3 %.");
    }
}
