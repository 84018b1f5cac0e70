namespace Ringwright.Cli.Output;

/// <summary>Turns Ctrl+C into a cancelled token while it lives, so that long work stops cleanly.</summary>
internal sealed class Interrupt : IDisposable
{
    private readonly CancellationTokenSource _source;

    public Interrupt(CancellationToken outer)
    {
        _source = CancellationTokenSource.CreateLinkedTokenSource(outer);
        Console.CancelKeyPress += Stop;
    }

    public CancellationToken Token => _source.Token;

    public void Dispose()
    {
        Console.CancelKeyPress -= Stop;
        _source.Dispose();
    }

    private void Stop(object? sender, ConsoleCancelEventArgs e)
    {
        e.Cancel = true;
        _source.Cancel();
    }
}
