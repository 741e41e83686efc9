using BenchmarkDotNet.Attributes;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>JSON documents of the typical circuit: one circuit written and read, and its design with every check.</summary>
public class DocumentBenchmarks
{
    private readonly CircuitDocument circuit = CircuitDocument.Create(Circuits60V.Typical(50), DesignRules.RoadVehicle);
    private readonly string circuitText = CircuitDocument.Create(Circuits60V.Typical(50), DesignRules.RoadVehicle).Write();
    private readonly DesignDocument design = DesignDocument.Create(CircuitDesigner.Design(Circuits60V.Typical(50), DesignRules.RoadVehicle));
    private readonly string designText = DesignDocument.Create(CircuitDesigner.Design(Circuits60V.Typical(50), DesignRules.RoadVehicle)).Write();

    /// <summary>What is read must be what was written; else it would be no measure.</summary>
    [GlobalSetup]
    public void Setup()
    {
        if (CircuitDocument.Read(circuitText).Write() != circuitText || DesignDocument.Read(designText).Write() != designText)
        {
            throw new InvalidOperationException("A document does not come back.");
        }

        Settling.Run(() => WriteCircuit(), () => ReadCircuit(), () => WriteDesign(), () => ReadDesign());
    }

    [Benchmark(Description = "Write a circuit as JSON")]
    public string WriteCircuit() => circuit.Write();

    [Benchmark(Description = "Read a circuit from JSON")]
    public CircuitDocument ReadCircuit() => CircuitDocument.Read(circuitText);

    [Benchmark(Description = "Write a design as JSON")]
    public string WriteDesign() => design.Write();

    [Benchmark(Description = "Read a design from JSON")]
    public DesignDocument ReadDesign() => DesignDocument.Read(designText);
}
