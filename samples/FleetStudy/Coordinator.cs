using Orleans.Concurrency;
using Orleans.Storage;

namespace FleetStudy;

/// <summary>Hands out the pieces, a few more at a time than there are cores, and adds up what comes back.</summary>
/// <remarks>
/// A tally is added only while its piece is not done yet, and the flag and the sum are kept in one write. So an answer that comes twice is dropped, and pieces whose write was lost are done
/// again. Should two activations lead the same study for a moment, the version of the record refuses the second writer, which then leaves.
/// </remarks>
[Reentrant, GrainType("fleet-coordinator")]
internal sealed class Coordinator([PersistentState("study", Coordinator.Storage)] IPersistentState<StudyRecord> kept, Lanes lanes) : Grain, ICoordinator, IDisposable
{
    public const string Storage = "studies";

    // Of one piece, by whatever went wrong; then the study says so and rests.
    private const int MostAttempts = 12;

    // In a row; some ten seconds.
    private const int MostLostWrites = 30;

    private static readonly TimeSpan SaveEvery = TimeSpan.FromMilliseconds(300), CountSilosEvery = TimeSpan.FromSeconds(2), StopPatience = TimeSpan.FromSeconds(3);

    private readonly CancellationTokenSource stop = new();
    private readonly Queue<int> waiting = new();
    private readonly Dictionary<int, int> attempts = [];
    private readonly TaskCompletionSource left = new();
    private StudyRecord now = new();
    private Task saving = Task.CompletedTask;
    private string? failure;
    private bool runs, changed;
    private int underWay, redone, keptCount, lostWrites, silos = 1;

    public override async Task OnActivateAsync(CancellationToken cancellationToken)
    {
        now = kept.State.Copy();
        keptCount = now.DoneCount;
        if (now.Spec is not null && !now.IsStopped)
        {
            await Go();
        }
    }

    public override Task OnDeactivateAsync(DeactivationReason reason, CancellationToken cancellationToken)
    {
        stop.Cancel();
        return Task.CompletedTask;
    }

    public async Task Start(StudySpec spec)
    {
        bool isNew = now.Spec is null || now.IsStopped;
        if (isNew)
        {
            (now.Spec, now.IsStopped) = (spec, false);
            now.Done = now.Done.Length == 0 ? new bool[spec.Pieces] : now.Done;
            changed = true;
        }

        // The cores work while the first write is under way; whoever asked for the start waits for it.
        await Go();
        if (isNew)
        {
            await Save();
        }
    }

    public Task<StudyProgress> Progress() => Task.FromResult(new StudyProgress(keptCount, now.Done.Length, redone, failure, silos));

    public Task<Tally> Result() => Task.FromResult(now.Total.Copy());

    public async Task<StudyProgress> Stop()
    {
        await stop.CancelAsync();
        if (underWay > 0)
        {
            // A call to a silo that has just died may not come back in time; its piece is not kept then.
            await Task.WhenAny(left.Task, Task.Delay(StopPatience));
        }

        now.IsStopped = keptCount < now.Done.Length;
        changed = true;
        await Save();

        // The next start finds the record and begins with a fresh activation.
        DeactivateOnIdle();
        return await Progress();
    }

    public void Dispose() => stop.Dispose();

    private async Task Go()
    {
        if (runs || stop.IsCancellationRequested)
        {
            return;
        }

        runs = true;
        for (int piece = 0; piece < now.Done.Length; piece++)
        {
            if (!now.Done[piece])
            {
                waiting.Enqueue(piece);
            }
        }

        _ = this.RegisterGrainTimer(SaveQuietly, new GrainTimerCreationOptions { DueTime = SaveEvery, Period = SaveEvery, Interleave = true, KeepAlive = true });
        _ = this.RegisterGrainTimer(CountSilos, new GrainTimerCreationOptions { DueTime = TimeSpan.Zero, Period = CountSilosEvery, Interleave = true });
        HandOut();
        await CountSilos();
    }

    private void HandOut()
    {
        while (waiting.Count > 0 && underWay < 2 * silos * lanes.Cores && failure is null && !stop.IsCancellationRequested)
        {
            underWay++;
            _ = Do(waiting.Dequeue());
        }
    }

    // Never throws: what goes wrong with a piece is told by the study, and the piece is handed out again.
    private async Task Do(int piece)
    {
        try
        {
            Tally tally = await GrainFactory.GetGrain<IPieceGrain>($"{this.GetPrimaryKeyString()}/{piece}").Calculate(now.Spec!, piece, stop.Token);
            if (!now.Done[piece])
            {
                now.Done[piece] = changed = true;
                now.Total.Merge(tally);
            }
        }
        catch (OtherBuildException other)
        {
            failure = other.Message;
        }
        catch (Exception lost)
        {
            if (!stop.IsCancellationRequested)
            {
                await Again(piece, lost);
            }
        }

        underWay--;
        HandOut();
        if (underWay == 0)
        {
            if (stop.IsCancellationRequested)
            {
                left.TrySetResult();
            }
            else
            {
                await SaveQuietly();
            }
        }
    }

    private async Task Again(int piece, Exception lost)
    {
        int attempt = attempts[piece] = attempts.GetValueOrDefault(piece) + 1;
        redone++;
        if (attempt >= MostAttempts)
        {
            failure = $"Piece {piece} failed {attempt} times: {lost.Message}";
            return;
        }

        try
        {
            // A silo that has died is still asked until the others agree on its death: longer from time to time, or the attempts are used up before.
            await Task.Delay(TimeSpan.FromMilliseconds(Math.Min(5000, 100 * Math.Pow(2, attempt))), stop.Token);
            waiting.Enqueue(piece);
        }
        catch (OperationCanceledException)
        {
            // Stopped meanwhile: the piece stays for the next time.
        }
    }

    private async Task CountSilos()
    {
        try
        {
            silos = Math.Max(1, (await GrainFactory.GetGrain<IManagementGrain>(0).GetHosts(onlyActive: true)).Count);
        }
        catch (Exception unknown) when (unknown is OrleansException or TimeoutException)
        {
            // While silos come and go the last count is good enough.
        }

        HandOut();
    }

    private async Task SaveQuietly()
    {
        try
        {
            await Save();
        }
        catch (InconsistentStateException)
        {
            // Another activation leads the study: it has what was kept, and does the rest.
            await stop.CancelAsync();
            DeactivateOnIdle();
        }
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            // A busy or lost database: the next round tries again. What is not kept is not told as done.
            changed = true;
            if (++lostWrites >= MostLostWrites)
            {
                failure ??= $"What was found cannot be kept: {problem.Message}";
            }
        }
    }

    // One write at a time; what changes meanwhile goes with the next.
    private async Task Save()
    {
        while (!saving.IsCompleted)
        {
            await saving.ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Current);
        }

        if (changed)
        {
            changed = false;
            saving = Write(now.Copy());
            await saving;
        }
    }

    private async Task Write(StudyRecord copy)
    {
        kept.State = copy;
        await kept.WriteStateAsync();
        (keptCount, lostWrites) = (copy.DoneCount, 0);
    }
}
