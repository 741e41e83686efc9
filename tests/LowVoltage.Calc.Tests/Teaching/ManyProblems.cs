using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>The problems that the properties are held against: every topic, difficulty, unit system and form, made once for all tests.</summary>
public sealed class ManyProblems
{
    private const int Seeds = 152;
    private const int DesignSeeds = 60;

    private readonly Lazy<Problem[]> problems = new(() =>
        [.. (from topic in Enum.GetValues<ProblemTopic>()
             from difficulty in Enum.GetValues<Difficulty>()
             from units in Enum.GetValues<ProblemUnits>()
             select (topic, difficulty, units)).AsParallel().AsOrdered().SelectMany(kind =>
                Enumerable.Range(0, kind.difficulty == Difficulty.Design ? DesignSeeds : Seeds)
                    .Select(seed => ProblemGenerator.Create(seed - 20, kind.topic, kind.difficulty, kind.units, (ProblemForm)(seed % 3))))]);

    public IReadOnlyList<Problem> All => problems.Value;
}
