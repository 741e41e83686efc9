using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Heating;

/// <summary>The steady balance of one round wire (or bundle) on doubles. Temperatures in °C, lengths in m, heat in W/m.</summary>
/// <remarks>
/// Everything is written in the surface temperature u, because the conductor temperature follows from it without iteration:
/// θ = u + W·q(u), with q the heat leaving and W the thermal resistance inside the surface. q is convex in u above the ambient, so
/// each of the equations below has one root there and Newton's method from the right never misses it.
/// </remarks>
internal readonly partial struct HeatBalanceKernel
{
    /// <summary>The hottest conductor the model follows; the air properties end soon above.</summary>
    internal const double MostConductorCelsius = 1500;

    internal const double StefanBoltzmann = 5.670374419e-8;
    private const double ReferenceCelsius = 20;
    private const int MostIterations = 100;

    // Newton's convergence is quadratic: after a step of this many kelvins the next would be some 1e-12 K.
    private const double LastStep = 1e-5;

    private readonly double ambient;
    private readonly double ambientKelvin;
    private readonly double wallsToTheFourth;
    private readonly double radiationFactor;
    private readonly double rayleighFactor;
    private readonly double reynoldsFactor;
    private readonly double heightToDiameter;
    private readonly double givenConductance;

    internal HeatBalanceKernel(double diameter, double innerResistance, double ohmsPerMeter20, ConductorMaterial material, Surroundings air)
        : this(diameter, innerResistance, ohmsPerMeter20, material, air, air.Emissivity)
    {
    }

    /// <summary>A surface that radiates otherwise than the wires themselves, as the string round several of them does.</summary>
    internal HeatBalanceKernel(double diameter, double innerResistance, double ohmsPerMeter20, ConductorMaterial material, Surroundings air, double emissivity)
    {
        Diameter = diameter;
        InnerResistance = innerResistance;
        OhmsPerMeter20 = ohmsPerMeter20;
        Alpha = material.TemperatureCoefficient;
        MostCelsius = Math.Min(material.MeltingPointCelsius, MostConductorCelsius);
        ambient = air.AmbientCelsius;
        ambientKelvin = ambient + AirKernel.ZeroCelsius;
        double walls = air.RadiatingCelsius ?? ambient;
        double wallsSquared = (walls + AirKernel.ZeroCelsius) * (walls + AirKernel.ZeroCelsius);
        wallsToTheFourth = wallsSquared * wallsSquared;
        radiationFactor = Math.PI * diameter * emissivity * StefanBoltzmann;
        double pressureByGas = air.Pascals / AirKernel.GasConstant;
        rayleighFactor = AirKernel.StandardGravity * diameter * diameter * diameter * pressureByGas * pressureByGas;
        heightToDiameter = air.HeightMeters / diameter;
        reynoldsFactor = air.WattsPerSquareMeterKelvin is null ? ForcedKernel.ReynoldsFactor(air, diameter, 0.5 * (MostCelsius + ambient)) : 0;
        givenConductance = air.WattsPerSquareMeterKelvin is { } coefficient ? Math.PI * diameter * coefficient : 0;
        NoLoadCelsius = ambient;
        if (givenConductance == 0 && radiationFactor > 0 && !walls.Equals(ambient))
        {
            // Air and walls differ: without current the wire settles between the two.
            NoLoadCelsius = FindSurface(0, 0, 1, Math.Min(ambient, walls), Math.Max(ambient, walls), 0.5 * (ambient + walls));
        }
    }

    private HeatBalanceKernel(in HeatBalanceKernel other, double coefficient, double ohmsPerMeter20)
    {
        this = other;
        OhmsPerMeter20 = ohmsPerMeter20;
        if (coefficient > 0)
        {
            givenConductance = Math.PI * Diameter * coefficient;
            ambient = NoLoadCelsius;
        }
    }

    internal double Diameter { get; }

    /// <summary>W, K·m/W: from the surface to the hottest conductor, per watt and metre of all the heat.</summary>
    internal double InnerResistance { get; }

    internal double OhmsPerMeter20 { get; }

    internal double Alpha { get; }

    internal double MostCelsius { get; }

    /// <summary>Temperature without current.</summary>
    internal double NoLoadCelsius { get; }

    /// <summary>Heat per metre and kelvin of the surface above the air, W/(m·K), where a coefficient was given; zero in free air.</summary>
    internal double Conductance => givenConductance;

    internal static HeatBalanceKernel For(Wire wire, Surroundings surroundings)
    {
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = surroundings ?? throw new ArgumentNullException(nameof(surroundings));
        Conductor conductor = wire.Conductor;
        return new(wire.OuterDiameterMillimeters * 1e-3, InsulationResistance(wire), conductor.OhmsPerMeter20, conductor.Material, surroundings);
    }

    /// <summary>ρT·ln(D/d)/(2π), K·m/W; zero for a bare wire.</summary>
    internal static double InsulationResistance(Wire wire) =>
        wire.Insulation.ThermalResistivityKelvinMetersPerWatt
        * Math.Log(wire.OuterDiameterMillimeters / wire.Conductor.DiameterMillimeters) / (2 * Math.PI);

    /// <summary>The same wire losing its heat through a coefficient, W/(m²·K), to what it settles at without current.</summary>
    internal HeatBalanceKernel WithCoefficient(double coefficient) => new(this, coefficient, OhmsPerMeter20);

    /// <summary>One of n equal wires that share a current evenly, in terms of the current of all of them.</summary>
    internal HeatBalanceKernel Sharing(int parallel) => new(this, 0, OhmsPerMeter20 / ((double)parallel * parallel));

    /// <summary>Heat leaving the surface and its slope against the surface temperature.</summary>
    internal double Loss(double surface, out double slope)
    {
        double convection = Convection(surface, out slope, out _);
        return convection + Radiation(surface, ref slope);
    }

    /// <summary>The two paths apart; a given coefficient counts as convection.</summary>
    internal (double Convection, double Radiation, double Rayleigh) Paths(double surface)
    {
        double convection = Convection(surface, out double slope, out double rayleigh);
        return (convection, Radiation(surface, ref slope), rayleigh);
    }

    internal double ConductorAt(double surface) => surface + (InnerResistance * Loss(surface, out _));

    internal double OhmsPerMeterAt(double conductor) => OhmsPerMeter20 * (1 + (Alpha * (conductor - ReferenceCelsius)));

    /// <summary>Surface temperature that belongs to a conductor temperature.</summary>
    internal double SurfaceFor(double conductor)
    {
        if (InnerResistance == 0)
        {
            return conductor;
        }

        if (givenConductance > 0)
        {
            return ambient + ((conductor - ambient) / (1 + (InnerResistance * givenConductance)));
        }

        // u + W·q(u) − θ = 0, between the temperature without current and θ.
        return conductor >= NoLoadCelsius
            ? FindSurface(-conductor, 1, InnerResistance, NoLoadCelsius, conductor, conductor)
            : FindSurface(-conductor, 1, InnerResistance, conductor, NoLoadCelsius, conductor);
    }

    /// <summary>Current that holds a conductor temperature; 0 when the surroundings alone make it that hot.</summary>
    internal double AmperesFor(double conductor)
    {
        double loss = conductor > NoLoadCelsius ? Loss(SurfaceFor(conductor), out _) : 0;
        return loss > 0 ? Math.Sqrt(loss / OhmsPerMeterAt(conductor)) : 0;
    }

    /// <summary>Whether a current holds a conductor temperature above that without current, or a higher one: what it makes there is not less than what would leave.</summary>
    /// <remarks>More heat through the insulation means a cooler surface, which loses less: no search is needed to compare.</remarks>
    internal bool HoldsAtLeast(double amperes, double conductor)
    {
        double heat = amperes * amperes * OhmsPerMeterAt(conductor), surface = conductor - (InnerResistance * heat);
        return conductor <= NoLoadCelsius || surface <= NoLoadCelsius || heat >= Loss(surface, out _);
    }

    /// <summary>Surface temperature that a current settles at, also when the conductor is past its melting point there.</summary>
    /// <returns>False when there is none up to the limit: more heat is made than can leave.</returns>
    internal bool TryBalance(double amperesSquared, out double surface)
    {
        // θ = u + W·q and q = I²·R′(θ) give (1 − I²·R20·α·W)·q(u) − I²·R20·[1 + α(u − 20)] = 0.
        double heat = amperesSquared * OhmsPerMeter20;
        double perKelvin = heat * Alpha;
        double lossFactor = 1 - (perKelvin * InnerResistance);
        double constant = (perKelvin * ReferenceCelsius) - heat;
        surface = NoLoadCelsius;
        if (amperesSquared == 0)
        {
            return true;
        }

        if (lossFactor <= 0)
        {
            return false;
        }

        if (givenConductance > 0)
        {
            double slope = lossFactor * givenConductance;
            surface = ((slope * ambient) - constant) / (slope - perKelvin);
            return (lossFactor * Loss(MostCelsius, out _)) - (perKelvin * MostCelsius) + constant >= 0;
        }

        // Where more leaves at the first guess than is made there is a balance below it; else somewhere up to the limit, or none.
        double guess = FirstGuess(heat), leaves = (lossFactor * Loss(guess, out double lossSlope)) - (perKelvin * guess) + constant;
        bool below = leaves >= 0;
        if (!below && (lossFactor * Loss(MostCelsius, out _)) - (perKelvin * MostCelsius) + constant < 0)
        {
            return false;
        }

        double low = below ? NoLoadCelsius : guess, high = below ? guess : MostCelsius, next = guess - (leaves / ((lossFactor * lossSlope) - perKelvin));
        surface = FindSurface(constant, -perKelvin, lossFactor, low, high, next >= low && next <= high ? next : 0.5 * (low + high));
        return true;
    }

    /// <summary>Conductor temperature where a current settles at a surface temperature: what it makes is what leaves.</summary>
    internal double ConductorInBalance(double amperesSquared, double surface)
    {
        double heat = amperesSquared * OhmsPerMeter20;
        return surface + (InnerResistance * heat * (1 + (Alpha * (surface - ReferenceCelsius))) / (1 - (heat * Alpha * InnerResistance)));
    }

    // Some 15 W/(m²·K) carries a wire's heat away: near enough for Newton to need four steps.
    private double FirstGuess(double heat) =>
        Math.Min(NoLoadCelsius + (1.3 * heat / (Math.PI * Diameter * 15)), 0.5 * (NoLoadCelsius + MostCelsius));

    /// <summary>Root of constant + linear·u + lossFactor·q(u), rising through zero in [low, high]: Newton, halving when it leaves the bracket.</summary>
    private double FindSurface(double constant, double linear, double lossFactor, double low, double high, double guess)
    {
        double surface = guess;
        for (int i = 0; i < MostIterations; i++)
        {
            double loss = Loss(surface, out double lossSlope);
            double value = constant + (linear * surface) + (lossFactor * loss);
            if (value < 0)
            {
                low = surface;
            }
            else
            {
                high = surface;
            }

            double slope = linear + (lossFactor * lossSlope);
            double next = surface - (value / slope);
            if (!(next >= low && next <= high))
            {
                next = 0.5 * (low + high);
            }

            double step = Math.Abs(next - surface);
            surface = next;

            if (step <= LastStep)
            {
                return surface;
            }
        }

        return surface;
    }
}
