using Ringwright.Web.Sharing;

namespace Ringwright.Web.Security;

/// <summary>Answers what cannot be answered with one sentence: neither an empty page nor a trace of the program.</summary>
internal static partial class Sentences
{
    public static void UseSentences(this WebApplication app)
    {
        ILogger log = app.Services.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(Sentences).FullName!);
        app.UseStatusCodePages(c => ShareGate.Say(c.HttpContext, c.HttpContext.Response.StatusCode, For(c.HttpContext.Response.StatusCode)));
        app.Use(async (context, next) =>
        {
            try
            {
                await next(context);
            }
            catch (BadHttpRequestException e) when (!context.Response.HasStarted)
            {
                await Instead(context, e.StatusCode);
            }
#pragma warning disable CA1031 // The last resort: a person gets a sentence, the log gets the fault.
            catch (Exception e) when (!context.Response.HasStarted && !context.RequestAborted.IsCancellationRequested)
#pragma warning restore CA1031
            {
                Failed(log, e);
                await Instead(context, StatusCodes.Status500InternalServerError);
            }
        });
    }

    private static Task Instead(HttpContext context, int status)
    {
        context.Response.Clear();
        return ShareGate.Say(context, status, For(status));
    }

    private static string For(int status) => status switch
    {
        StatusCodes.Status404NotFound => "Nothing is at this address (404); the bench is at /.",
        StatusCodes.Status405MethodNotAllowed => "This address cannot be used in that way (405); the bench is at /.",
        StatusCodes.Status413PayloadTooLarge => $"That is too large (413); at most {WebServer.LargestFile / (1024 * 1024)} MB are read.",
        StatusCodes.Status500InternalServerError => "A fault of Ringwright’s own (500); your work is as it was before.",
        < StatusCodes.Status500InternalServerError => $"This request cannot be read ({status}); the bench is at /.",
        _ => $"This cannot be answered at present ({status}); the bench is at /.",
    };

    [LoggerMessage(LogLevel.Error, "A request could not be answered.")]
    private static partial void Failed(ILogger log, Exception fault);
}
