using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The axe rules, run in the page itself: it has no frames, and what is in order needs no report.</summary>
internal static class Axe
{
    private static readonly string Script = new BundledAxeScriptProvider().GetScript();

    /// <summary>Which rules are broken seriously or critically, and where.</summary>
    /// <param name="page">The page.</param>
    /// <param name="part">Which part of it.</param>
    /// <param name="coloursOnly">In the dark only colours differ, so only they are looked at again.</param>
    public static async Task<string[]> Serious(IPage page, string part = "html", bool coloursOnly = false)
    {
        if (!await page.EvaluateAsync<bool>("'axe' in window")) await page.EvaluateAsync(Script + ";null");
        return await page.EvaluateAsync<string[]>(
            """
            async ([part, coloursOnly]) => {
              const only = coloursOnly ? { runOnly: { type: 'rule', values: ['color-contrast'] } } : {};
              const { violations } = await axe.run(part, { resultTypes: ['violations'], ...only });
              return violations.filter((v) => v.impact === 'serious' || v.impact === 'critical').map((v) => `${v.id}: ${v.nodes.map((n) => n.html).join('; ')}`);
            }
            """,
            new object[] { part, coloursOnly });
    }
}
