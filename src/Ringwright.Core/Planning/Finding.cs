namespace Ringwright.Core.Planning;

/// <summary>How much a finding matters.</summary>
public enum Weight
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>Will probably go wrong as it stands.</summary>
    Doubt,

    /// <summary>Cannot be made as it stands.</summary>
    Stop,
}

/// <summary>Something the maker should know, with the change that would help when there is one.</summary>
/// <param name="Weight">How much it matters.</param>
/// <param name="Ring">The ring's name.</param>
/// <param name="Sentence">What it is.</param>
/// <param name="Change">The change that would help, or null.</param>
public sealed record Finding(Weight Weight, string Ring, Sentence Sentence, FieldChange? Change = null);

/// <summary>One length of the ring set to another value.</summary>
/// <param name="Field">The field's name in the file, such as <c>tip</c>.</param>
/// <param name="Millimetres">The new value, mm.</param>
/// <param name="Label">What the change does, for a button.</param>
public sealed record FieldChange(string Field, double Millimetres, Sentence Label);
