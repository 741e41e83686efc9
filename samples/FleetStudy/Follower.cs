using System.Diagnostics;

namespace FleetStudy;

/// <summary>Starts a study and follows it to its end, past silos that die on the way.</summary>
internal sealed class Follower(IGrainFactory grains, StudySpec spec, Action<StudyProgress> told, Func<CancellationToken, Task> watch)
{
    // So long may nobody answer; a crash of the silo that leads the study takes some ten seconds to be noticed.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(180), AskEvery = TimeSpan.FromMilliseconds(100);

    private readonly ICoordinator coordinator = grains.GetGrain<ICoordinator>(spec.Key);

    /// <summary>Brings the study to its end.</summary>
    /// <exception cref="OperationCanceledException">Stopped; what is done is kept.</exception>
    /// <exception cref="UnfinishedException">It cannot go on.</exception>
    public async Task<Tally> Go(CancellationToken stop)
    {
        try
        {
            await Start(stop);
            while (true)
            {
                StudyProgress progress = await Ask(coordinator.Progress, stop);
                if (progress.Pieces == 0)
                {
                    // Its silo died before it had kept anything.
                    await Start(stop);
                }

                told(progress);
                if (progress.Failure is { } failure)
                {
                    throw new UnfinishedException(failure);
                }

                if (progress.IsFinished)
                {
                    return await Ask(coordinator.Result, stop);
                }

                await Task.Delay(AskEvery, stop);
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            await Stop();
            throw;
        }
    }

    private Task<bool> Start(CancellationToken stop) => Ask(async () =>
    {
        await coordinator.Start(spec);
        return true;
    }, stop);

    private async Task<T> Ask<T>(Func<Task<T>> question, CancellationToken stop)
    {
        Stopwatch waited = Stopwatch.StartNew();
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            await watch(stop);
            try
            {
                return await question().WaitAsync(stop);
            }
            catch (Exception problem) when (problem is not OperationCanceledException and not UnfinishedException)
            {
                if (waited.Elapsed > Patience)
                {
                    throw new UnfinishedException($"No silo answers: {problem.Message}");
                }

                await Task.Delay(200, stop);
            }
        }
    }

    private async Task Stop()
    {
        try
        {
            told(await coordinator.Stop());
        }
        catch (Exception lost) when (lost is OrleansException or TimeoutException or InvalidOperationException)
        {
            // Nobody is there to stop; what was kept before is kept.
        }
    }
}
