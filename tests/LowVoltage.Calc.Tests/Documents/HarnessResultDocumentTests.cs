using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Documents;

public class HarnessResultDocumentTests
{
    [Fact]
    public void Write_AndRead_GivesTheSameChecksFindingsAndNumbers()
    {
        Harness harness = HarnessDocument.Read(HarnessPieces.Van).Harness;
        HarnessVerification verification = HarnessDesigner.Verify(harness);
        HarnessSolution solution = harness.Solve(SupplyLevel.Minimum, harness.LoadCases[1]);
        HarnessResultDocument document = HarnessResultDocument.Create(verification, harness.Solve(), solution);
        HarnessResultDocument back = HarnessResultDocument.Read(document.Write());
        Assert.Equal(document.Write(), back.Write());
        Assert.Equal(verification.Verdict, back.Verdict);
        Assert.Equal(
            verification.Checks.Select(check => (check.Place, check.Wire, check.Toward, check.LoadCase, check.Kind, check.Outcome, check.Result.Value, check.Result.Limit, check.Result.Note)),
            back.Checks.Select(check => (check.Place, check.Wire, check.Toward, check.LoadCase, (Calc.Checks.CheckKind?)check.Check.Kind, check.Check.Outcome, check.Check.Value, check.Check.Limit, check.Check.Note)));
        Assert.Equal(verification.Findings.Select(finding => (finding.Severity, finding.Text)), back.Findings.Select(finding => (finding.Severity, finding.Text)));
        Assert.Equal(verification.Cautions, back.Cautions);
        Assert.Equal(verification.Assumptions, back.Assumptions);
        Assert.Equal(verification.Advice, back.Advice);
        DocumentedSolution read = back.Solutions[1];
        Assert.True(read.Exists);
        Assert.Equal((solution.LoadCase.Name, solution.Level), (read.LoadCase, read.Level));
        Assert.All(read.Nodes, node => Assert.Equal(solution.VoltageOf(node.Id), node.Voltage));
        Assert.All(read.Branches, branch => Assert.Equal(solution.CurrentOf(branch.Id), branch.Current));
        Assert.All(read.Loads, load => Assert.Equal((solution.CurrentAt(load.Id), solution.ConditionOf(load.Id)), (load.Current!.Value, load.Condition!.Value)));
        Assert.All(read.Sources, source => Assert.Equal(solution.CurrentFrom(source.Id), source.Current));
        Assert.Equal(harness.Branches.Count, read.Branches.Count);
        Assert.Equal(verification.Checks.Select(check => check.Outcome), back.Verify().Checks.Select(check => check.Outcome));
    }

    [Fact]
    public void Create_OfASolutionOfAnotherHarness_IsRefused()
    {
        Harness harness = HarnessDocument.Read(HarnessPieces.Van).Harness, other = HarnessDocument.Read(HarnessPieces.Van).Harness;
        Assert.Equal("solutions", Assert.Throws<ArgumentException>(() => HarnessResultDocument.Create(HarnessDesigner.Verify(harness), other.Solve())).ParamName);
    }
}
