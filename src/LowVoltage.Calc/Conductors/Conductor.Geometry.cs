using System.Globalization;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

public sealed partial class Conductor
{
    private const int MostStrands = 100_000;

    private static readonly Reference CallerGeometry = Reference.CommonPractice("R = ρL/A of a geometry given by the caller");

    /// <summary>An AWG wire in one call: stranded annealed copper of a gauge number, concentric lay of 2 %.</summary>
    /// <param name="number">Gauge number: −3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else 1 to 40.</param>
    /// <returns>The conductor, as <see cref="Stranded(AwgSize, ConductorMaterial)"/> makes it; <see cref="Solid(AwgSize, ConductorMaterial)"/> for solid wire.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from −3 to 40.</exception>
    public static Conductor Awg(int number) => Stranded(AwgSize.FromNumber(number), ConductorMaterial.Copper);

    /// <summary>A round solid wire of a gauge size.</summary>
    /// <param name="size">The gauge.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor: R′20 = ρ20/A with the exact-formula area.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor Solid(AwgSize size, ConductorMaterial material) =>
        Round($"{size.Need(nameof(size))} {Need(material).Name}", size, size.AreaSquareMillimeters, material, AwgSize.Reference);

    /// <summary>A round solid wire of a kcmil size.</summary>
    /// <param name="size">The size.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor: R′20 = ρ20/A.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor Solid(KcmilSize size, ConductorMaterial material) =>
        Round($"{size.Need(nameof(size))} {Need(material).Name}", size, size.AreaSquareMillimeters, material, KcmilSize.Reference);

    /// <summary>A round solid wire of a stated diameter.</summary>
    /// <param name="diameter">The diameter. Positive, at most 1 m.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor: R′20 = ρ20/(π d²/4).</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside that range.</exception>
    public static Conductor SolidOfDiameter(Length diameter, ConductorMaterial material)
    {
        double millimeters = Millimeters(diameter, nameof(diameter));
        return Round($"{Accept.Text(millimeters)} mm {Need(material).Name} wire", null, Math.PI / 4 * millimeters * millimeters, material, CallerGeometry);
    }

    /// <summary>A bar of any shape and a stated cross-section.</summary>
    /// <param name="area">The metal's cross-section. Positive, at most 1e6 mm².</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor: R′20 = ρ20/A; its diameter is that of the circle of the same area.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside that range.</exception>
    public static Conductor OfArea(Area area, ConductorMaterial material)
    {
        double squareMillimeters = Accept.SquareMillimeters(area, nameof(area));
        return Round($"{Accept.Text(squareMillimeters)} mm² {Need(material).Name} bar", null, squareMillimeters, material, CallerGeometry);
    }

    /// <summary>A stranded conductor of a gauge size, concentric lay of 2 %.</summary>
    /// <param name="size">The gauge: the strands together have its area.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor Stranded(AwgSize size, ConductorMaterial material) => Stranded(size, material, Stranding.ConcentricLay);

    /// <summary>A stranded conductor of a gauge size.</summary>
    /// <param name="size">The gauge: the strands together have its area.</param>
    /// <param name="material">The metal. For tinned copper give that of the strand's diameter.</param>
    /// <param name="layFactor">Length of strand per length of conductor, 1 to 1.10: 1.02 concentric or bunched, 1.03 to 1.07 rope lay (from memory).</param>
    /// <returns>The conductor: R′20 = ρ20 · lay/A.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lay factor is outside that range, or the size is a <c>default</c>.</exception>
    /// <remarks>
    /// The 2 % is ASTM B8 and B496. The diameter is that of class B stranding (7 strands up to 2 AWG, 19 above); finer strands come out up to 2 % thicker.
    /// </remarks>
    public static Conductor Stranded(AwgSize size, ConductorMaterial material, double layFactor) =>
        Rope($"{size.Need(nameof(size))} stranded {Need(material).Name}", size, size.AreaSquareMillimeters, Stranding.ClassB(size), material, layFactor);

    /// <summary>A stranded conductor of a kcmil size, concentric lay of 2 %.</summary>
    /// <param name="size">The size: the strands together have its area.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor Stranded(KcmilSize size, ConductorMaterial material) => Stranded(size, material, Stranding.ConcentricLay);

    /// <summary>A stranded conductor of a kcmil size.</summary>
    /// <param name="size">The size: the strands together have its area.</param>
    /// <param name="material">The metal.</param>
    /// <param name="layFactor">Length of strand per length of conductor, 1 to 1.10.</param>
    /// <returns>The conductor: R′20 = ρ20 · lay/A, class B stranding (37 strands up to 500 kcmil, 61 above).</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lay factor is outside that range, or the size is a <c>default</c>.</exception>
    public static Conductor Stranded(KcmilSize size, ConductorMaterial material, double layFactor) =>
        Rope($"{size.Need(nameof(size))} stranded {Need(material).Name}", size, size.AreaSquareMillimeters, Stranding.ClassB(size), material, layFactor);

    /// <summary>A conductor of equal strands, lay of 2 %.</summary>
    /// <param name="strands">Number of strands, 1 to 100 000.</param>
    /// <param name="strandDiameter">Diameter of one strand. Positive, at most 1 m.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Conductor StrandedFrom(int strands, Length strandDiameter, ConductorMaterial material) =>
        StrandedFrom(strands, strandDiameter, material, Stranding.ConcentricLay);

    /// <summary>A conductor of equal strands.</summary>
    /// <param name="strands">Number of strands, 1 to 100 000.</param>
    /// <param name="strandDiameter">Diameter of one strand. Positive, at most 1 m.</param>
    /// <param name="material">The metal. For tinned copper give that of the strand's diameter.</param>
    /// <param name="layFactor">Length of strand per length of conductor, 1 to 1.10.</param>
    /// <returns>The conductor: A = n · π d²/4, R′20 = ρ20 · lay/A.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the strands together exceed 1e6 mm².</exception>
    public static Conductor StrandedFrom(int strands, Length strandDiameter, ConductorMaterial material, double layFactor)
    {
        int count = Accept.Count(strands, 1, MostStrands, nameof(strands));
        double millimeters = Millimeters(strandDiameter, nameof(strandDiameter));
        double area = Accept.Positive(count * Math.PI / 4 * millimeters * millimeters, Accept.MostSquareMillimeters, "mm² of all strands", nameof(strandDiameter));
        string name = $"{count.ToString(CultureInfo.InvariantCulture)} × {Accept.Text(millimeters)} mm {Need(material).Name}";
        return Rope(name, null, area, count, material, layFactor);
    }

    private static Conductor Round(string name, ConductorSize? size, double area, ConductorMaterial material, Reference reference) => new()
    {
        Name = name,
        Size = size,
        System = size?.System ?? SizeSystem.Geometry,
        Basis = ResistanceBasis.SolidGeometry,
        Material = material,
        AreaSquareMillimeters = area,
        DiameterMillimeters = CircleDiameter(area),
        OhmsPerMeter20 = material.OhmMeters20 * 1e6 / area,
        Reference = reference,
    };

    private static Conductor Rope(string name, ConductorSize? size, double area, int strands, ConductorMaterial material, double layFactor)
    {
        double lay = Stranding.AcceptLay(layFactor, nameof(layFactor));
        return new Conductor
        {
            Name = name,
            Size = size,
            System = size?.System ?? SizeSystem.Geometry,
            Basis = ResistanceBasis.StrandedGeometry,
            Material = material,
            LayFactor = lay,
            AreaSquareMillimeters = area,
            DiameterMillimeters = Stranding.Diameter(area, strands),
            OhmsPerMeter20 = material.OhmMeters20 * 1e6 * lay / area,
            Reference = Stranding.ConcentricReference,
        };
    }

    private static double CircleDiameter(double squareMillimeters) => Math.Sqrt(4 * squareMillimeters / Math.PI);

    private static double Millimeters(in Length length, string name) => Accept.Within(Accept.Meters(length, name), 0, 1, "m", name) * 1000;

    private static ConductorMaterial Need(ConductorMaterial material) => material ?? throw new ArgumentNullException(nameof(material));
}
