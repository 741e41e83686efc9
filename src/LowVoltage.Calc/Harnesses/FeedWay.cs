namespace LowVoltage.Calc.Harnesses;

/// <summary>The way from a node to what feeds it.</summary>
/// <param name="Branches">Its branches, from the node on.</param>
/// <param name="EndNode">The node where it ends.</param>
/// <param name="End">What is there.</param>
internal sealed record FeedWay(int[] Branches, int EndNode, FeedEnd End);
