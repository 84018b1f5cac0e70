using Ringwright.Core;

namespace Ringwright.Store;

/// <summary>
/// The data file or a file beside it cannot be read or written as things stand, told in one sentence: where, what is wrong,
/// and what would be right. What was saved before is whole.
/// </summary>
public sealed class StoreException : Exception
{
    /// <summary>Makes the sentence "<paramref name="where"/>: <paramref name="problem"/>; <paramref name="right"/>."</summary>
    /// <param name="fault">What kind of fault it is.</param>
    /// <param name="where">The file or folder.</param>
    /// <param name="problem">What is wrong.</param>
    /// <param name="right">What would be right.</param>
    /// <param name="cause">What the system said; null when the fault was found here.</param>
    public StoreException(StoreFault fault, string where, string problem, string right, Exception? cause = null)
        : base(OneLine.Of($"{where}: {problem}; {right}."), cause)
    {
        Fault = fault;
        Where = where;
        Problem = problem;
        Right = right;
    }

    /// <summary>What kind of fault it is.</summary>
    public StoreFault Fault { get; }

    /// <summary>The file or folder.</summary>
    public string Where { get; }

    /// <summary>What is wrong.</summary>
    public string Problem { get; }

    /// <summary>What would be right.</summary>
    public string Right { get; }
}

/// <summary>What keeps the data file from being used.</summary>
public enum StoreFault
{
    /// <summary>Another program is writing and did not finish in time.</summary>
    Locked,

    /// <summary>File or folder may not be written, or cannot be made.</summary>
    ReadOnly,

    /// <summary>The disk is full.</summary>
    DiskFull,

    /// <summary>The disk refuses to read or write.</summary>
    Disk,

    /// <summary>The file's content is damaged.</summary>
    Damaged,

    /// <summary>A newer Ringwright made the file.</summary>
    Newer,

    /// <summary>The file belongs to another program.</summary>
    Foreign,
}
