namespace Ringwright.Paper.Lettering;

/// <summary>How heavy the letters are; the number is the weight in the OpenType sense.</summary>
public enum FontWeight
{
    /// <summary>Running text and dimensions.</summary>
    Regular = 400,

    /// <summary>Headings, table heads and key figures.</summary>
    SemiBold = 600,
}
