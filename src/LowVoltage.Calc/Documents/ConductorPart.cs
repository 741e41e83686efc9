using System.Text.Json;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>A conductor in a document: a size of a series, or its values.</summary>
internal static class ConductorPart
{
    private static readonly WordForm<SizeSystem> Systems = new(
        ("none", SizeSystem.Geometry), ("AWG", SizeSystem.AmericanWireGauge), ("kcmil", SizeSystem.Kcmil), ("IEC 60228", SizeSystem.Iec60228), ("road vehicle", SizeSystem.RoadVehicle),
        ("vehicle gauge", SizeSystem.VehicleGauge), ("aircraft wire", SizeSystem.AircraftWire), ("metric", SizeSystem.Metric));

    private static readonly WordForm<ResistanceBasis> Bases = new(
        ("solid geometry", ResistanceBasis.SolidGeometry), ("stranded geometry", ResistanceBasis.StrandedGeometry), ("standard maximum", ResistanceBasis.StandardMaximum), ("stated", ResistanceBasis.Stated));

    private static readonly Member<ConductorSeries> Series = Member.Needed<ConductorSeries>("series", new LaterForm(() => ConductorSeriesPart.Form), "The series that it is a size of.");
    private static readonly Member<ConductorSize> SeriesSize = Member.Needed<ConductorSize>("size", SizeForm.Any, "The size: 2.5 mm², 14 AWG.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What it is called.");
    private static readonly Member<double> Ohms = Member.Needed<double>("resistance_ohm_per_m", Ranges.Ohms, "Resistance per length at 20 °C, Ω/m.");
    private static readonly Member<double> Area = Member.Needed<double>("area_mm2", Ranges.SquareMillimeters, "Cross-section of the metal, mm²; of a standard's size the nominal one.");
    private static readonly Member<double> Diameter = Member.Needed<double>("diameter_mm", new NumberForm(1e-9, 1e5, "mm"), "Diameter over the metal, mm.");
    private static readonly Member<ConductorMaterial> Metal = Member.Needed<ConductorMaterial>("material", MaterialPart.Form, "The metal.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where the values come from.");
    private static readonly Member<ConductorSize> Size = Member.Optional<ConductorSize>("size", SizeForm.Any, "The size that it is sold as, by which tables of current are read; left out: none.");
    private static readonly Member<SizeSystem> System = Member.Optional<SizeSystem>("system", Systems, "The system of the size; left out: what the size says.");
    private static readonly Member<ResistanceBasis> Basis = Member.Optional<ResistanceBasis>("basis", Bases, "Where the resistance comes from; left out: stated.");
    private static readonly Member<double> Lay = Member.Optional<double>("lay_factor", new NumberForm(1, Stranding.MostLay, ""), "Length of strand per length of conductor; left out: 1.");

    internal static EitherForm Form { get; } = new(
        "conductor",
        "A bare conductor: a size of a series, or its values.",
        null,
        new ObjectForm("conductor_of_series", "A size of a series.", Find, [Series, SeriesSize]),
        new ObjectForm("conductor_stated", "A conductor of the caller's.", Make, [Name, Ohms, Area, Diameter, Metal, Source, Size, System, Basis, Lay]));

    internal static void Write(Utf8JsonWriter json, Conductor conductor)
    {
        json.WriteStartObject();
        if (ConductorSeriesPart.CarriedWith(conductor) is { } word)
        {
            json.WriteString(Series.Encoded, word);
            json.WriteString(SeriesSize.Encoded, conductor.Size!.Value.Designation);
        }
        else
        {
            json.Put(Name, conductor.Name);
            json.Put(Ohms, conductor.OhmsPerMeter20);
            json.Put(Area, conductor.AreaSquareMillimeters);
            json.Put(Diameter, conductor.DiameterMillimeters);
            json.Put(Metal, conductor.Material, MaterialPart.Write);
            json.Put(Source, conductor.Reference, ReferencePart.Write);
            WriteSize(json, conductor);
        }

        json.WriteEndObject();
    }

    private static void WriteSize(Utf8JsonWriter json, Conductor conductor)
    {
        if (conductor.Size is { } size)
        {
            json.WriteString(Size.Encoded, size.Designation);
        }

        if (conductor.System != (conductor.Size?.System ?? SizeSystem.Geometry))
        {
            json.WriteString(System.Encoded, Systems.WordOf(conductor.System));
        }

        if (conductor.Basis != ResistanceBasis.Stated)
        {
            json.WriteString(Basis.Encoded, Bases.WordOf(conductor.Basis));
        }

        json.PutUnless(Lay, conductor.LayFactor, 1);
    }

    private static Conductor? Find(Values at)
    {
        ConductorSeries series = at.Get(Series);
        if (series.TryGet(at.Get(SeriesSize), out Conductor? conductor))
        {
            return conductor;
        }

        at.Reading.Judge(at.At(SeriesSize), $"must be a size of \"{series.Name}\": {string.Join(", ", series.Conductors.Select(own => own.Size?.Designation).OfType<string>())}; it was {at.At(SeriesSize).Said}.");
        return null;
    }

    private static Conductor? Make(Values at)
    {
        double area = at.Get(Area), solid = Math.Sqrt(4 * area / Math.PI);
        ConductorMaterial metal = at.Get(Metal);
        ConductorSize? size = at.Maybe(Size);
        if (size is { } own)
        {
            // What a conductor of a size may hold of its nominal metal, as Conductor.Create has it.
            double nominal = own.NominalArea.SquareMillimeters;
            _ = Accept.Within(area, nominal * 0.8, nominal * 1.25, "mm²", nameof(area));
        }

        if (!Fits(at.Or(System, SystemOf(size)), SystemOf(size)))
        {
            at.Reading.Judge(at.At(System), size is { } given ? $"must be the system of {given}." : "must be left out, or \"none\", where there is no size.");
            return null;
        }

        return new Conductor
        {
            Name = at.Get(Name),
            Size = size,
            System = at.Or(System, SystemOf(size)),
            Basis = at.Or(Basis, ResistanceBasis.Stated),
            Material = metal,
            LayFactor = at.Or(Lay, 1),
            AreaSquareMillimeters = area,
            DiameterMillimeters = Accept.Within(at.Get(Diameter), solid * (1 - 1e-9), solid * 3, "mm", "diameter"),
            OhmsPerMeter20 = Accept.Within(at.Get(Ohms), Math.Max(metal.OhmMeters20 * 1e6 / area / 1.10, Accept.Least), Accept.MostOhms, "Ω/m", "resistance"),
            Reference = at.Get(Source),
        };
    }

    private static SizeSystem SystemOf(ConductorSize? size) => size?.System ?? SizeSystem.Geometry;

    // Square millimetres are a size of whichever standard.
    private static bool Fits(SizeSystem stated, SizeSystem own) => stated == own || (own == SizeSystem.Metric && stated is (SizeSystem.Iec60228 or SizeSystem.RoadVehicle));
}
