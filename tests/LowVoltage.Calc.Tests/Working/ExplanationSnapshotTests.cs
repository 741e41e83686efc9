using System.Globalization;
using System.Text;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>Every explanation of the library as text, each kind of step once, read by a person when it changes. Whether its numbers are right is tested elsewhere: see <see cref="ExplanationProperties"/>.</summary>
/// <remarks>One stands whole in its three forms. One file a subject holds, of each step, the lines that no subject before it has, in words and symbols; a digest a subject stands for its explanations in each of their forms. What stands word for word in the library, a reason, a source, a heading, is read there. To renew after a change that is meant: <c>bash .ci/approve</c>.</remarks>
public class ExplanationSnapshotTests
{
    private const int Draw = 1;

    // It is shown as plain text, Markdown with LaTeX, HTML with MathML.
    private const string InAllForms = "explained V divider";

    private static readonly Lazy<Dictionary<string, string>> Written = new(Write);

    public static TheoryData<string> Names => [.. Written.Value.Keys];

    [Theory, MemberData(nameof(Names))]
    public void Explanation_IsTheOneThatWasReviewed(string name) => ApprovedText.Check(name, Written.Value[name]);

    /// <summary>No text depends on what was asked before. A run of mutants, in one process, notices a changed text by this.</summary>
    [Fact]
    public void Explanations_WrittenAgain_AreTheSame() => Assert.Equal(Written.Value, Write());

    [Fact]
    public void ApprovedFiles_AreAllOfThisDay() => Assert.Equal(Written.Value.Keys.Order(StringComparer.Ordinal), ApprovedText.Names("explained-"));

    // File and text. A sheet of a design comes first, so that it is read in one piece.
    private static Dictionary<string, string> Write()
    {
        WorkedSolution[] sheets = [.. Sheets().Concat(Loads().Where((_, i) => i % 2 == 0))];
        IEnumerable<int> first = [4, 0, 1, 2, 3];
        (string Name, WorkedSolution Solution)[] all =
        [
            .. first.Concat(Enumerable.Range(5, sheets.Length - 5)).Select(i => ($"explained sheet {i + 1:00}", sheets[i])),
            .. DesignSnapshotTests.Designs().Select(one => ($"explained design {one.Name}", one.Design.Explain())),
            .. Explained.All(Draw).Select(one => ("explained " + one.Name, one.Solution)),
        ];
        News news = new();
        Dictionary<string, string> whole = new(StringComparer.Ordinal);
        Dictionary<string, string> files = new(StringComparer.Ordinal);
        foreach ((string name, WorkedSolution solution) in all)
        {
            string subject = string.Join(' ', name.Split(' ').Skip(1).Take(1));
            whole[subject] = whole.GetValueOrDefault(subject) + solution.ToText() + solution.ToMarkdown() + solution.ToHtml();
            // What a design assumes and advises is read with the designs.
            if (news.Of(SolutionWords.Of(solution, name.StartsWith("explained design", StringComparison.Ordinal))) is { Length: > 0 } steps)
            {
                string file = File(name.Split(' ')[1] == "sheet" ? name : string.Join(" ", name.Split(' ').Take(2)));
                files[file] = files.GetValueOrDefault(file) + steps.TrimEnd() + "\n\n";
            }
        }

        WorkedSolution other = all.First(one => one.Name == InAllForms).Solution;
        files["explained-as-text.txt"] = other.ToText();
        files["explained-as-markdown.txt"] = other.ToMarkdown();
        files["explained-as-html.txt"] = other.ToHtml();
        files["explained-digests.txt"] = string.Concat(whole.Select(subject => $"{subject.Key} {ApprovedText.Digest(subject.Value)}\n"));
        return files;
    }

    // A name as a file may have it.
    private static string File(string name)
    {
        string latin = name.Replace("θ", "theta", StringComparison.Ordinal).Replace("α", "alpha", StringComparison.Ordinal).Replace("ρ", "rho", StringComparison.Ordinal);
        return string.Join('-', latin.Split([.. latin.Where(c => !char.IsAsciiLetterOrDigit(c)).Distinct()], StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant() + ".txt";
    }

    // A fuse against a wire that it protects, fails, and lets melt; a design with a chassis, one that nothing fits, and wiring that exists.
    private static IEnumerable<WorkedSolution> Sheets()
    {
        Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(30) };
        foreach ((double section, double fuse, double most) in new[] { (1.5, 15.0, 500.0), (0.5, 40, 1500) })
        {
            Wire wire = Wire.Create(Conductor.OfArea(Area.FromSquareMillimeters(section), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
            FuseRating rating = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(fuse));
            yield return FuseAgainstWire.Check(rating, ProtectedWire.Create(wire, air), ElectricCurrent.FromAmperes(most)).Explain();
            yield return FuseAgainstWire.Check(rating, ProtectedWire.Create(wire, air).Carrying(ElectricCurrent.FromAmperes(9)), ElectricCurrent.FromAmperes(most)).Explain();
        }

        foreach ((double meters, Source source) in new (double, Source)[]
        {
            (4.0, Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600))),
            (400, Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600))),
            (3, Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(200))),
            (2, Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(10))),
        })
        {
            CircuitRequirements asked = new()
            {
                Name = "invented circuit",
                Source = source,
                Load = Load.Lamp(Power.FromWatts(55), ElectricPotential.FromVolts(12)),
                Feed = Length.FromMeters(meters),
                Return = ReturnPath.Chassis(ElectricResistance.FromMilliohms(5)),
                Joints = [Joint.Create("fuse holder", ElectricResistance.FromMilliohms(3))],
                Upstream = ElectricResistance.FromMilliohms(14),
                Place = new Place { Ambient = Temperature.FromDegreesCelsius(40) },
                Insulation = InsulationMaterial.PolyvinylChloride,
            };
            yield return CircuitDesigner.Design(asked, DesignRules.Presets[(int)meters % 4]).Explain();
        }
    }

    // Each kind of load, at the points where its source can just not serve it too.
    private static IEnumerable<WorkedSolution> Loads()
    {
        ElectricPotential twelve = ElectricPotential.FromVolts(12), ten = ElectricPotential.FromVolts(10);
        ElectricCurrent six = ElectricCurrent.FromAmperes(6);
        Load[] loads =
        [
            Load.Resistance(ElectricResistance.FromOhms(1)), Load.ConstantCurrent(six), Load.ConstantPower(Power.FromWatts(60), 0.85, ten),
            Load.ConstantCurrent(six).WithInputCapacitor(ElectricCapacitance.FromMillifarads(2)), Load.ConstantCurrent(six).WithDutyCycle(DutyCycle.FromFraction(0.25)).WithMinimumVoltage(ten),
            Load.Motor(six, ElectricCurrent.FromAmperes(20), ElectricCurrent.FromAmperes(30), Duration.FromSeconds(0.3), twelve),
            Load.Together(Load.Lamp(Power.FromWatts(21), twelve), Load.ConstantPower(Power.FromWatts(10))),
        ];
        Source[] sources =
        [
            Source.BehindResistance(ten, twelve, ElectricPotential.FromVolts(14), ElectricResistance.FromMilliohms(5), ElectricResistance.FromMilliohms(20)),
            Source.CurrentLimited(twelve, ElectricCurrent.FromAmperes(7)), Source.InSeries(Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)), Source.Ideal(twelve)),
        ];
        CircuitPath path = CircuitPath.Create(Segment.Create(Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper), Length.FromMeters(4)), ReturnPath.Shared(ElectricResistance.FromMilliohms(4), six))
            .WithFeedJoints(Joint.Create("fuse holder", ElectricResistance.FromMilliohms(3)));
        ConductorTemperature warm = ConductorTemperature.SelfHeated(Temperature.FromDegreesCelsius(30), ElectricCurrent.FromAmperes(20), Temperature.FromDegreesCelsius(90));
        return
            from load in loads
            from source in sources
            let point = OperatingPoint.Solve(source, path, load, warm)
            where point.Exists
            select point.Explain();
    }
}
