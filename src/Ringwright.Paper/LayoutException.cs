using System.Globalization;

namespace Ringwright.Paper;

/// <summary>Something that cannot be put on the sheet without cutting it off or setting it too small to read.</summary>
public sealed class LayoutException : Exception
{
    /// <summary>A text that does not fit.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">Room across, mm.</param>
    /// <param name="height">Room down, mm, where it is limited.</param>
    /// <param name="least">The smallest height of capitals that was tried, mm.</param>
    public LayoutException(string text, double width, double? height, double least)
        : base(string.Create(CultureInfo.InvariantCulture, $"The text \"{Short(text)}\" does not fit {Room(width, height)} even at {least} mm; make it shorter."))
    {
        Text = text;
    }

    /// <summary>A block or picture that does not fit.</summary>
    /// <param name="what">What does not fit, as a person would call it.</param>
    /// <param name="needed">What it needs, mm.</param>
    /// <param name="room">What there is, mm.</param>
    public LayoutException(string what, double needed, double room)
        : base(string.Create(CultureInfo.InvariantCulture, $"{what} needs {needed:0.#} mm but has {room:0.#} mm; use a larger sheet or less content."))
    {
        Text = what;
    }

    /// <summary>The text, or the name of the thing, that does not fit.</summary>
    public string Text { get; }

    private static string Short(string text) => text.Length <= 60 ? text : $"{text[..57]}...";

    private static string Room(double width, double? height) => height is { } down
        ? string.Create(CultureInfo.InvariantCulture, $"{width:0.#} x {down:0.#} mm")
        : string.Create(CultureInfo.InvariantCulture, $"{width:0.#} mm");
}
