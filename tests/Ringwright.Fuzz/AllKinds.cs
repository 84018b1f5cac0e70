using Ringwright.Fuzz.Kinds;
using Ringwright.Fuzz.Running;

namespace Ringwright.Fuzz;

/// <summary>Every kind of input that is tried.</summary>
public static class AllKinds
{
    private static readonly Dictionary<string, Func<Kind>> Kinds = new()
    {
        ["lengths"] = () => new Lengths(),
        ["angles"] = () => new Angles(),
        ["times"] = () => new Times(),
        ["temperatures"] = () => new Temperatures(),
        ["readings"] = () => new Readings(),
        ["patterns"] = () => new Patterns(),
        ["documents"] = () => new Documents(),
        ["plans"] = () => new Plans(),
        ["tables"] = () => new Tables(),
        ["pictures"] = () => new Pictures(),
        ["databases"] = () => new Databases(),
        ["commands"] = () => new Commands(),
    };

    /// <summary>Their names.</summary>
    public static IReadOnlyCollection<string> Names => Kinds.Keys;

    /// <summary>The kind of this name.</summary>
    public static Kind Named(string name) => Kinds[name]();
}
