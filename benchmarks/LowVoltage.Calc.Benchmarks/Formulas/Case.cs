using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Benchmarks.Formulas;

/// <summary>What one case of every formula is given: each input as a double in SI, named by its unit, and as a quantity, named by what it is.</summary>
public sealed class Case
{
    private Case(Random random, bool other)
    {
        Volts = Draw(random, 12, 15);
        Voltage = other ? ElectricPotential.FromMillivolts(Volts * 1e3) : ElectricPotential.FromVolts(Volts);
        Supply = Circuits.Source.Ideal(Voltage);
        LowVolts = Draw(random, 9, 11.5);
        LowVoltage = other ? ElectricPotential.FromMillivolts(LowVolts * 1e3) : ElectricPotential.FromVolts(LowVolts);
        AllowedVolts = Draw(random, 0.2, 0.8);
        Allowed = other ? ElectricPotential.FromMillivolts(AllowedVolts * 1e3) : ElectricPotential.FromVolts(AllowedVolts);
        Amperes = Draw(random, 2, 12);
        Current = other ? ElectricCurrent.FromMilliamperes(Amperes * 1e3) : ElectricCurrent.FromAmperes(Amperes);
        MoreAmperes = Draw(random, 60, 80);
        MoreCurrent = other ? ElectricCurrent.FromMilliamperes(MoreAmperes * 1e3) : ElectricCurrent.FromAmperes(MoreAmperes);
        FaultAmperes = Draw(random, 400, 600);
        Fault = other ? ElectricCurrent.FromKiloamperes(FaultAmperes * 1e-3) : ElectricCurrent.FromAmperes(FaultAmperes);
        Ohms = Draw(random, 0.05, 0.2);
        Resistance = other ? ElectricResistance.FromMilliohms(Ohms * 1e3) : ElectricResistance.FromOhms(Ohms);
        OtherOhms = Draw(random, 2, 5);
        OtherResistance = other ? ElectricResistance.FromMilliohms(OtherOhms * 1e3) : ElectricResistance.FromOhms(OtherOhms);
        LastOhms = Draw(random, 6, 9);
        LastResistance = other ? ElectricResistance.FromMilliohms(LastOhms * 1e3) : ElectricResistance.FromOhms(LastOhms);
        Watts = Math.Round(Draw(random, 20, 100), 3);
        Power = other ? Power.FromKilowatts((decimal)Watts / 1000) : Power.FromWatts((decimal)Watts);
        Meters = Draw(random, 1, 10);
        Length = other ? Length.FromFeet(Meters / 0.3048) : Length.FromMeters(Meters);
        RunMeters = Draw(random, 110, 180);
        Run = other ? Length.FromFeet(RunMeters / 0.3048) : Length.FromMeters(RunMeters);
        Millimeters = Draw(random, 0.5, 3);
        Diameter = other ? Length.FromMillimeters(Millimeters) : Length.FromMeters(Millimeters * 1e-3);
        SquareMillimeters = Draw(random, 2, 4);
        Area = other ? Area.FromSquareCentimeters(SquareMillimeters * 1e-2) : Area.FromSquareMillimeters(SquareMillimeters);
        Celsius = Draw(random, 31, 40);
        Temperature = other ? Temperature.FromDegreesFahrenheit((Celsius * 1.8) + 32) : Temperature.FromDegreesCelsius(Celsius);
        HotCelsius = Draw(random, 60, 80);
        Hot = other ? Temperature.FromDegreesFahrenheit((HotCelsius * 1.8) + 32) : Temperature.FromDegreesCelsius(HotCelsius);
        LimitCelsius = Draw(random, 150, 160);
        Limit = other ? Temperature.FromDegreesFahrenheit((LimitCelsius * 1.8) + 32) : Temperature.FromDegreesCelsius(LimitCelsius);
        Seconds = Draw(random, 0.05, 0.2);
        Duration = other ? Duration.FromMilliseconds(Seconds * 1e3) : Duration.FromSeconds(Seconds);
        Coulombs = Draw(random, 3600, 360_000);
        Charge = other ? ElectricCharge.FromAmpereHours(Coulombs / 3600) : ElectricCharge.FromCoulombs(Coulombs);
        OhmMeters = Draw(random, 1.7e-8, 2.8e-8);
        Resistivity = other ? ElectricResistivity.FromNanoohmMeters(OhmMeters * 1e9) : ElectricResistivity.FromOhmMeters(OhmMeters);
        Kelvins = Draw(random, 10, 50);
        Difference = other ? TemperatureDelta.FromDegreesFahrenheit(Kelvins * 1.8) : TemperatureDelta.FromKelvins(Kelvins);
        Percent = Math.Round(Draw(random, 20, 100));
        Share = other ? Ratio.FromDecimalFractions(Percent / 100) : Ratio.FromPercent(Percent);
        WattsPerSquareMeterKelvin = Draw(random, 5, 20);
        Coefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(WattsPerSquareMeterKelvin);
        Number = Draw(random, 200, 9000);
        OhmsPerMeter = Draw(random, 1e-3, 2e-2);
        PerLength = LinearResistance.FromOhmsPerMeter(OhmsPerMeter);
        OtherOhmsPerMeter = Draw(random, 1e-3, 2e-2);
        OtherPerLength = LinearResistance.FromOhmsPerMeter(OtherOhmsPerMeter);
        AmpereSquaredSeconds = Draw(random, 10, 1000);
        Joule = JouleIntegral.FromAmpereSquaredSeconds(AmpereSquaredSeconds);
    }

    public double Volts { get; }

    public ElectricPotential Voltage { get; }

    /// <summary>An ideal source of <see cref="Volts"/>.</summary>
    public Source Supply { get; }

    /// <summary>Below <see cref="Volts"/>.</summary>
    public double LowVolts { get; }

    public ElectricPotential LowVoltage { get; }

    public double AllowedVolts { get; }

    public ElectricPotential Allowed { get; }

    public double Amperes { get; }

    public ElectricCurrent Current { get; }

    /// <summary>Above <see cref="Amperes"/>.</summary>
    public double MoreAmperes { get; }

    public ElectricCurrent MoreCurrent { get; }

    public double FaultAmperes { get; }

    public ElectricCurrent Fault { get; }

    public double Ohms { get; }

    public ElectricResistance Resistance { get; }

    public double OtherOhms { get; }

    public ElectricResistance OtherResistance { get; }

    public double LastOhms { get; }

    public ElectricResistance LastResistance { get; }

    public double Watts { get; }

    public Power Power { get; }

    public double Meters { get; }

    public Length Length { get; }

    /// <summary>Beyond 100 m.</summary>
    public double RunMeters { get; }

    public Length Run { get; }

    public double Millimeters { get; }

    public Length Diameter { get; }

    public double SquareMillimeters { get; }

    public Area Area { get; }

    /// <summary>An ambient, or where a short circuit begins.</summary>
    public double Celsius { get; }

    public Temperature Temperature { get; }

    public double HotCelsius { get; }

    public Temperature Hot { get; }

    public double LimitCelsius { get; }

    public Temperature Limit { get; }

    public double Seconds { get; }

    public Duration Duration { get; }

    public double Coulombs { get; }

    public ElectricCharge Charge { get; }

    public double OhmMeters { get; }

    public ElectricResistivity Resistivity { get; }

    public double Kelvins { get; }

    public TemperatureDelta Difference { get; }

    public double Percent { get; }

    public Ratio Share { get; }

    public double WattsPerSquareMeterKelvin { get; }

    public HeatTransferCoefficient Coefficient { get; }

    /// <summary>A Rayleigh number.</summary>
    public double Number { get; }

    public double OhmsPerMeter { get; }

    public LinearResistance PerLength { get; }

    public double OtherOhmsPerMeter { get; }

    public LinearResistance OtherPerLength { get; }

    public double AmpereSquaredSeconds { get; }

    public JouleIntegral Joule { get; }

    /// <summary>The same cases every time, in SI and mm², °C, or in other units.</summary>
    internal static Case[] Draw(int count, bool otherUnits)
    {
        Random random = new(1);
        return [.. Enumerable.Range(0, count).Select(_ => new Case(random, otherUnits))];
    }

    private static double Draw(Random random, double least, double most) => least + ((most - least) * random.NextDouble());
}
