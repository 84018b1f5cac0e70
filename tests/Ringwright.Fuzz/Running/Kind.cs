using Ringwright.Fuzz.Making;

namespace Ringwright.Fuzz.Running;

/// <summary>
/// One kind of input: how a random one is made, and what must hold for it. An input is text; bytes are kept as one character each
/// (Latin-1), so that all kinds are mutated, shrunk and shown alike.
/// </summary>
public abstract class Kind : IDisposable
{
    /// <summary>Its name on the command line.</summary>
    public abstract string Name { get; }

    /// <summary>What the file of a found input ends with.</summary>
    public virtual string Ending => ".txt";

    /// <summary>The processor's time that a case may take.</summary>
    public virtual TimeSpan Slow => TimeSpan.FromSeconds(2);

    /// <summary>A random input.</summary>
    public abstract string Make(Dice dice);

    /// <summary>
    /// Gives the input to Ringwright. Returns when it was taken; throws Ringwright's own refusals when it was not, and
    /// <see cref="BrokenPromiseException"/> or anything else when something is wrong.
    /// </summary>
    public abstract void Check(string input);

    /// <summary>Simpler inputs to look at when one fails, the simplest first.</summary>
    public virtual IEnumerable<string> Simpler(string input) => Simplify.Text(input);

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Removes what it made on the disk.</summary>
    protected virtual void Dispose(bool disposing)
    {
    }
}

/// <summary>Something that must always hold did not.</summary>
public sealed class BrokenPromiseException : Exception
{
    public BrokenPromiseException(string promise, string found)
        : base($"{promise}: {found}") => Promise = promise;

    /// <summary>What was promised; tells one finding from another.</summary>
    public string Promise { get; }
}

/// <summary>Short ways to ask for a promise.</summary>
public static class Promise
{
    public static void That(bool holds, string promise, FormattableString found)
    {
        if (!holds) throw new BrokenPromiseException(promise, FormattableString.Invariant(found));
    }

    public static void Same<T>(T expected, T found, string promise) => That(EqualityComparer<T>.Default.Equals(expected, found), promise, $"{expected} became {found}");

    public static void Finite(double value, string what) => That(double.IsFinite(value), "every figure is a number", $"{what} is {value}");
}
