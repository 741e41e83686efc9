namespace LowVoltage.Calc.Teaching;

/// <summary>What a problem is asked to be.</summary>
internal sealed record ProblemRequest(
    long Seed, ProblemTopic Topic, Difficulty Difficulty, ProblemUnits Units, ProblemForm Form, ProblemSetting? Setting);
