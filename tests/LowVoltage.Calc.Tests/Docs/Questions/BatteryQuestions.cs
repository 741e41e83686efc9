using LowVoltage.Calc.Circuits;
using Console = LowVoltage.Calc.Tests.Docs.Snippets.Console;

namespace LowVoltage.Calc.Tests.Docs.Questions;

/// <summary>What the battery has, gives and loses.</summary>
internal static class BatteryQuestions
{
    public static void HowFull()
    {
        #region how-full
        ChargeBand charge = LeadAcidCharge.BandAt(ElectricPotential.FromVolts(12.4), Temperature.FromDegreesCelsius(20));
        Console.WriteLine($"{charge.Likely:0 %} full, somewhere between {charge.Least:0 %} and {charge.Greatest:0 %}");
        #endregion
    }

    public static void HowLong()
    {
        #region how-long
        ElectricCharge usable = ElectricCharge.FromAmpereHours(100 * 0.5);
        DutyCycle fridge = DutyCycle.FromTimes(Duration.FromMinutes(20), Duration.FromHours(1));
        Duration time = ElectricalEnergy.RunningTime(usable, ElectricCurrent.FromAmperes(4.5 * fridge.Fraction));
        Console.WriteLine($"{time.Hours:0} hours");
        #endregion
    }

    public static void InnerResistance()
    {
        #region inner-resistance
        ElectricResistance inner = InternalResistance.FromDischarge(
            ElectricPotential.FromVolts(12.70), ElectricPotential.FromVolts(12.25), ElectricCurrent.FromAmperes(50));
        Console.WriteLine($"{inner.Milliohms:0.0} mΩ");
        #endregion
    }

    public static void ShortedBattery()
    {
        #region shorted-battery
        ProspectiveCurrent shorted = ProspectiveCurrent.AtSource(Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(800)));
        Console.WriteLine($"{shorted.Least!.Value.Amperes:0} A when cold and worn, up to {shorted.Greatest!.Value.Amperes:0} A when new");
        #endregion
    }

    public static void OneFullOneEmpty()
    {
        #region one-full-one-empty
        OpposingSources joined = OpposingSources.Solve(
            ElectricPotential.FromVolts(12.7), ElectricPotential.FromVolts(11.8), ElectricResistance.FromMilliohms(6 + 8 + 4));
        Console.WriteLine($"{joined.Current.Amperes:0} A flow from the full one into the empty one");
        #endregion
    }

    public static void CrankingVoltage()
    {
        #region cranking-voltage
        ElectricPotential left = InternalResistance.TerminalVoltage(
            ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(9), ElectricCurrent.FromAmperes(180));
        Console.WriteLine($"{left.Volts:0.0} V at the terminals while it cranks");
        #endregion
    }
}
