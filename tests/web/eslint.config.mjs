import js from '@eslint/js';
import globals from 'globals';

export default [
  js.configs.recommended,
  {
    rules: {
      eqeqeq: 'error', 'no-var': 'error', 'prefer-const': 'error', 'no-eval': 'error', 'no-implied-eval': 'error', 'no-shadow': 'error',
      'no-restricted-properties': ['error', { property: 'innerHTML' }, { property: 'outerHTML' }, { property: 'insertAdjacentHTML' }, { object: 'document', property: 'write' }],
    },
  },
  { files: ['**/wwwroot/**'], languageOptions: { globals: { ...globals.browser, ...globals.worker } } },
  { files: ['**/wwwroot/sw.js'], languageOptions: { globals: globals.serviceworker } },
  { files: ['**/*.mjs'], languageOptions: { globals: { ...globals.node, ...globals.browser } } },
];
