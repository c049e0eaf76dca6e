import { fromMarkdown } from 'mdast-util-from-markdown';
import type { PhrasingContent, RootContent } from 'mdast';
import { LessonError, type Block, type Inline } from './lesson.ts';

/** A fenced block of a lesson's text: its name (figure, task) and its lines. */
export interface Fence {
  readonly name: string;
  readonly text: string;
}

/**
 * The text of a lesson as blocks. Only what a lesson page can show is let
 * through: headings, paragraphs, lists, quotes (shown as cautions) and fenced
 * blocks, which `fence` turns into figures and tasks.
 */
export function readBlocks(
  file: string,
  markdown: string,
  fence: (fence: Fence) => Block,
): readonly Block[] {
  return fromMarkdown(markdown).children.flatMap((node) => readNode(file, node, fence));
}

function readNode(file: string, node: RootContent, fence: (fence: Fence) => Block): Block[] {
  switch (node.type) {
    case 'heading':
      if (node.depth !== 2 && node.depth !== 3) {
        throw new LessonError(file, plain(file, node.children), 'headings are ## or ###');
      }
      return [{ kind: 'heading', level: node.depth, text: plain(file, node.children) }];
    case 'paragraph':
      return [{ kind: 'paragraph', text: inlines(file, node.children) }];
    case 'list':
      return [
        {
          kind: 'list',
          ordered: node.ordered === true,
          items: node.children.map((item) => itemText(file, item.children)),
        },
      ];
    case 'blockquote':
      return node.children.map((child) => ({ kind: 'caution', text: itemText(file, [child]) }));
    case 'code':
      return [fence({ name: node.lang ?? '', text: node.value })];
    default:
      throw new LessonError(file, node.type, 'cannot stand in a lesson');
  }
}

/** A list item or quote holds paragraphs only; they run on as one text. */
function itemText(file: string, nodes: readonly RootContent[]): Inline[] {
  return nodes.flatMap((node) => {
    if (node.type !== 'paragraph') {
      throw new LessonError(file, node.type, 'only plain text can stand in a list or a caution');
    }
    return inlines(file, node.children);
  });
}

function inlines(file: string, nodes: readonly PhrasingContent[]): Inline[] {
  return nodes.map((node) => {
    switch (node.type) {
      case 'text':
        return { text: node.value.replace(/\n/g, ' '), voice: 'plain' };
      case 'strong':
        return { text: plain(file, node.children), voice: 'strong' };
      case 'emphasis':
        return { text: plain(file, node.children), voice: 'emphasis' };
      case 'inlineCode':
        return { text: node.value, voice: 'code' };
      default:
        throw new LessonError(file, node.type, 'cannot stand in lesson text');
    }
  });
}

function plain(file: string, nodes: readonly PhrasingContent[]): string {
  return inlines(file, nodes)
    .map((run) => run.text)
    .join('');
}
