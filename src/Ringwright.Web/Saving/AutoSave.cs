using System.Threading.Channels;
using Ringwright.Store;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Saving;

/// <summary>Saves the bench at every change, in the background and in order; while one save runs, later changes gather into the next.</summary>
internal sealed class AutoSave(Workbench bench, PieceShelf shelf, StartState start) : BackgroundService
{
    private readonly Channel<bool> _due = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    /// <summary>Raised when <see cref="Trouble"/> changed.</summary>
    public event Action? Changed;

    /// <summary>Why work is not being saved; null when it is.</summary>
    public string? Trouble { get; private set; } = start.Unwritable;

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        if (start.Unwritable is not null) return;
        bench.Changed += MarkDue;
        try
        {
            await foreach (bool _ in _due.Reader.ReadAllAsync(stoppingToken)) Save();
        }
        catch (OperationCanceledException)
        {
            Save();
        }
        finally
        {
            bench.Changed -= MarkDue;
        }
    }

    private void MarkDue() => _due.Writer.TryWrite(true);

    private void Save()
    {
        string? before = Trouble;
        try
        {
            shelf.Save(bench.Now);
            Trouble = null;
        }
        catch (StoreException e)
        {
            Trouble = $"The last change could not be saved. {e.Message} Work goes on; save a copy.";
        }

        if (before != Trouble) Changed?.Invoke();
    }
}
