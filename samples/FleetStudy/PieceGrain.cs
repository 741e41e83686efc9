using Orleans.Placement;

namespace FleetStudy;

/// <summary>Calculates a piece and goes. As many at a time as the silo has cores.</summary>
[ActivationCountBasedPlacement, GrainType("fleet-piece")]
internal sealed class PieceGrain(Lanes lanes) : Grain, IPieceGrain
{
    public async Task<Tally> Calculate(StudySpec spec, int piece, CancellationToken stop)
    {
        DeactivateOnIdle();
        if (spec.Build != StudySpec.ThisBuild)
        {
            throw new OtherBuildException($"A silo on {Environment.MachineName} runs another build of this program: every machine needs the same files.");
        }

        return await lanes.Run(() => Piece.Calculate(spec, piece, stop), stop);
    }
}
