using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Web;

/// <summary>Prints job sheets. The page offers them when a service of this kind is registered.</summary>
public interface IJobSheets
{
    /// <summary>The job sheet of <paramref name="plan"/> as PDF, lengths in <paramref name="style"/>.</summary>
    byte[] Pdf(Plan plan, MeasureStyle style);
}
