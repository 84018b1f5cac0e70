using Ringwright.Paper.Sheets;
using Ringwright.Store;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Printing;

/// <summary>
/// How the user prints: paper, printer's correction and the like. Kept among the settings, so that it is the same for every piece, and
/// the shell can read it. All windows show the same; thread-safe.
/// </summary>
/// <param name="shelf">Where they are kept.</param>
/// <param name="start">Opens the shelf before anything is read from it.</param>
internal sealed class PrintChoices(PieceShelf shelf, StartState start)
{
    private readonly Lock _lock = new();
    private ImmutableSortedDictionary<string, string> _known = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>Raised after every change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>Why the last choice is not kept; null when it is. A sentence.</summary>
    public string? Trouble { get; private set; } = start.Unwritable is null ? null : "How you print is not kept either.";

    /// <summary>The text of a name, such as <c>paper</c>; empty when it is as usual.</summary>
    public string this[string name] => Now().GetValueOrDefault(name, "");

    /// <summary>As a query.</summary>
    public PrintQuery Query => PrintQuery.Of(Now());

    /// <summary>Chooses; an empty text is as usual.</summary>
    public void Set(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        // As it is typed, blanks at its end too; what reads it takes them away.
        string? value = string.IsNullOrWhiteSpace(text) ? null : text;
        lock (_lock)
        {
            _known = value is null ? _known.Remove(name) : _known.SetItem(name, value);
            try
            {
                if (shelf.Settings is Settings settings) settings[PrintSettings.Prefix + name] = value;
            }
            catch (StoreException e)
            {
                Trouble = $"How you print is not kept: {e.Message}";
            }
        }

        Changed?.Invoke();
    }

    // Read anew each time: the shell may have changed them.
    private ImmutableSortedDictionary<string, string> Now()
    {
        lock (_lock)
        {
            try
            {
                if (Trouble is null && shelf.Settings is Settings settings)
                    _known = settings.All().Where(s => s.Key.StartsWith(PrintSettings.Prefix, StringComparison.Ordinal)).ToImmutableSortedDictionary(s => s.Key[PrintSettings.Prefix.Length..], s => s.Value, StringComparer.Ordinal);
            }
            catch (StoreException e)
            {
                Trouble = $"How you print could not be read: {e.Message}";
            }

            return _known;
        }
    }
}
