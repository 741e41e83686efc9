using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class CopperClad
{
    public static void CopperCladAluminium()
    {
        #region copper-clad-aluminium
        Temperature warm = Temperature.FromDegreesCelsius(60);
        Length loop = Length.FromMeters(10);
        ElectricCurrent current = ElectricCurrent.FromAmperes(10);
        AwgSize size = AwgSize.Parse("10 AWG");

        ConductorMaterial[] metals =
            [ConductorMaterial.Copper, ConductorMaterial.CopperCladAluminium(0.15), ConductorMaterial.Aluminium];
        foreach (ConductorMaterial metal in metals)
        {
            Conductor wire = Conductor.Stranded(size, metal);
            ElectricPotential drop = VoltageDrop.Along(wire.ResistancePerLength(warm), loop, current);
            Console.WriteLine(
                $"{wire.Name}: {drop.Volts:0.000} V over {loop.Meters} m of wire at 10 A, {wire.Mass(loop).Grams:0} g");
        }
        #endregion
    }

    public static void CladSizeForTheSameDrop()
    {
        #region clad-size-for-the-same-drop
        ConductorMaterial clad = ConductorMaterial.CopperCladAluminium(copperShareByVolume: 0.15);
        Temperature warm = Temperature.FromDegreesCelsius(60);
        Conductor copper = Conductor.Stranded(AwgSize.Parse("10 AWG"), ConductorMaterial.Copper);

        AwgSize size = AwgSize.Parse("10 AWG");
        while (Conductor.Stranded(size, clad).ResistancePerLength(warm) > copper.ResistancePerLength(warm)
            && size.TryNextLarger(out AwgSize larger))
        {
            size = larger;
        }

        Console.WriteLine($"for the drop of 10 AWG copper: {size} copper-clad aluminium");
        #endregion
    }
}
