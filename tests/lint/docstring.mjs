/** The lint rule: whatever a file exports has a docstring in front of it. */
export const docstring = {
  meta: { type: 'suggestion', schema: [], messages: { missing: 'An exported symbol has a docstring.' } },
  create(context) {
    return {
      'ExportNamedDeclaration[declaration]'(node) {
        const comment = context.sourceCode.getCommentsBefore(node).at(-1);
        if (!comment?.value.startsWith('*')) context.report({ node, messageId: 'missing' });
      },
    };
  },
};
