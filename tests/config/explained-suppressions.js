/** A rule may be suppressed only with the reason beside it: `eslint-disable-next-line x -- why`. */
const DIRECTIVE = /^\s*eslint-disable/;
const WITH_REASON = /\s--\s+\S{3,}/;

export const explainedSuppressions = {
  rules: {
    'explained-suppressions': {
      meta: {
        type: 'suggestion',
        schema: [],
        messages: {
          unexplained: 'Say why the rule is suppressed: eslint-disable… rule -- reason.',
        },
      },
      create: (context) => ({
        Program() {
          for (const comment of context.sourceCode.getAllComments())
            if (DIRECTIVE.test(comment.value) && !WITH_REASON.test(comment.value))
              context.report({ loc: comment.loc, messageId: 'unexplained' });
        },
      }),
    },
  },
};
