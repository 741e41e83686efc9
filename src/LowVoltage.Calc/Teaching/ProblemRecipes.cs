namespace LowVoltage.Calc.Teaching;

/// <summary>Which recipe writes the problems of a topic and a difficulty.</summary>
internal static class ProblemRecipes
{
    internal static Func<ProblemDraft, bool> For(ProblemTopic topic, Difficulty difficulty)
    {
        if (difficulty == Difficulty.Design)
        {
            return DesignProblems.For(topic);
        }

        (Func<ProblemDraft, bool> one, Func<ProblemDraft, bool> several) = Pair(topic);
        return difficulty == Difficulty.OneStep ? one : several;
    }

    private static (Func<ProblemDraft, bool> One, Func<ProblemDraft, bool> Several) Pair(ProblemTopic topic) => topic switch
    {
        ProblemTopic.OhmsLaw => (OhmsLawProblems.OneStep, OhmsLawProblems.SeveralSteps),
        ProblemTopic.Power => (PowerProblems.OneStep, PowerProblems.SeveralSteps),
        ProblemTopic.SeriesResistance => (NetworkProblems.SeriesOneStep, NetworkProblems.SeriesSeveralSteps),
        ProblemTopic.ParallelResistance => (NetworkProblems.ParallelOneStep, NetworkProblems.ParallelSeveralSteps),
        ProblemTopic.WireResistance => (WireProblems.ResistanceOneStep, WireProblems.ResistanceSeveralSteps),
        ProblemTopic.TemperatureCorrection => (TemperatureProblems.OneStep, TemperatureProblems.SeveralSteps),
        ProblemTopic.VoltageDrop => (DropProblems.DropOneStep, DropProblems.DropSeveralSteps),
        ProblemTopic.VoltageAtLoad => (DropProblems.AtLoadOneStep, DropProblems.AtLoadSeveralSteps),
        ProblemTopic.SmallestSize => (SizeProblems.OneStep, SizeProblems.SeveralSteps),
        ProblemTopic.AmpacityDerating => (AmpacityProblems.OneStep, AmpacityProblems.SeveralSteps),
        ProblemTopic.FuseChoice => (FuseProblems.ChoiceOneStep, FuseProblems.ChoiceSeveralSteps),
        ProblemTopic.AdiabaticHeating => (HeatingProblems.OneStep, HeatingProblems.SeveralSteps),
        ProblemTopic.ProspectiveCurrent => (BatteryProblems.ProspectiveOneStep, BatteryProblems.ProspectiveSeveralSteps),
        ProblemTopic.BatteryResistance => (BatteryProblems.ResistanceOneStep, BatteryProblems.ResistanceSeveralSteps),
        ProblemTopic.FuseOpeningTime => (FuseProblems.TimeOneStep, FuseProblems.TimeSeveralSteps),
        ProblemTopic.WireGeometry => (WireProblems.GeometryOneStep, WireProblems.GeometrySeveralSteps),
        ProblemTopic.BatteryEnergy => (BatteryProblems.EnergyOneStep, BatteryProblems.EnergySeveralSteps),
        ProblemTopic.JointDrop => (PathProblems.JointOneStep, PathProblems.JointSeveralSteps),
        ProblemTopic.ChassisReturn => (PathProblems.ChassisOneStep, PathProblems.ChassisSeveralSteps),
        _ => (PathProblems.LampOneStep, PathProblems.LampSeveralSteps),
    };
}
